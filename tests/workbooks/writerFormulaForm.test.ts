import { isDynamic } from "../../src/cells/dynamicFormula";
import { builtInFormula, storedFormula } from "../../src/workbooks/writer/formulaForm";

// Which formulas older Excels would cut down to one value of a range by implicit intersection: Microsoft's help page
// "Implicit intersection operator: @", and XlsxWriter's "Working with Formulas", section "Dynamic Array support".
describe("the form of a formula", () => {
  const names = new Set(["RATE"]);

  test.each([
    "=B4/24",
    "=SUM(A1:A9)",
    "=SUM(A1:A9,Plan!B1:B9)/COUNT(A:A)",
    '=IF(B4>0,MAX(B5:B9),"a:b {c}")',
    "=Rate*2",
    '=SUMIF(A1:A9,">3",B1:B9)',
    "=IF(AND(B1>0,B2<5),TRUE,FALSE)",
    "=SUM(Needs)",
    "=ROUND(-(B1+B2)*2,1)",
  ])("%s is plain", (formula) => expect(isDynamic(formula, names)).toBe(false));

  test.each([
    "=OXYGEN.HOURS_TO_FILL(60,1.5)",
    "=SUM(A1:A9*2)",
    "=A1:A3",
    "=Needs*2",
    "=Needs",
    "=SUM(IF(A1:A9>0,B1:B9))",
    "=LEN(A1:A3)",
    "={1,2}",
    "=SUM({1,2}*A1:A2)",
    "=A1#",
    "=SUM(A1#)",
    "=FILTER(A1:A9,B1:B9>0)",
    "=LET(x,1,x+1)",
    "=Stock[Level]*2",
    "=INDEX(A1:A9,2)",
    "=IFERROR(OXYGEN.X(1),0)",
  ])("%s is a dynamic array", (formula) => expect(isDynamic(formula, names)).toBe(true));

  test("volatile functions are refused wherever they stand, words that look like one are not", () => {
    for (const formula of ["=TODAY()", "=SUM(1,now())", "=IF(A1,OFFSET(A1,1,1),2)", "=LET(x,RAND(),x)"]) {
      expect(() => storedFormula(formula)).toThrow(/volatile/);
    }
    expect(storedFormula('="TODAY()"&A1')).toBe('"TODAY()"&A1');
  });

  test("no custom function in a validation or conditional format", () => {
    expect(() => builtInFormula("=OXYGEN.X(A1)>2")).toThrow(/custom function/);
    expect(builtInFormula("=A1>2")).toBe("A1>2");
  });
});
