/** Positions counted by hand; "|" marks the caret. */
import { callAtCaret } from "../../src/cells/callAtCaret";

const at = (marked: string) => callAtCaret(marked.replace("|", ""), marked.indexOf("|"));

test.each([
  ["=OXYGEN.HOURS_TO_FILL(|", "OXYGEN.HOURS_TO_FILL", 0],
  ["=OXYGEN.HOURS_TO_FILL(60,|", "OXYGEN.HOURS_TO_FILL", 1],
  ["=oxygen.hours_to_fill(60,1.5|,0)", "OXYGEN.HOURS_TO_FILL", 1],
  ["=SUM(OXYGEN.FULL_AT(1,2),|", "SUM", 1],
  ["=SUM(1,OXYGEN.FULL_AT(1,(2+3)*|", "OXYGEN.FULL_AT", 1],
  ['=F("a,b(",|', "F", 1],
  ["=F('My, sheet'!A1,|", "F", 1],
  ["=F({1,2;3,4},|", "F", 1],
  ["=F({1,|", "F", 0],
  ['=F("a""b,",|', "F", 1],
  ["=F(1.50,Kinds[[#All],[a, b (L)]],|", "F", 2],
])("%s is argument %#", (marked, name, index) => {
  expect(at(marked)).toEqual({ name, index });
});

test.each(["OXYGEN.FULL_AT(|", "=1+|", "=(1,|", "=F(1)|", '=F("a|', "=F('My, sh|"])(
  "%s is in no argument",
  (marked) => {
    expect(at(marked)).toBeUndefined();
  },
);
