import type { Validation } from "../writer";

const quoted = (words: string): string => `"${words.replace(/"/g, '""')}"`;

const bare = (end: number | string): string => (typeof end === "string" ? end.replace(/^=/, "") : String(end));

/** 1 where a filled cell `x` breaks the rule, cell by cell. */
const broken = ({ rule }: Validation): string => {
  switch (rule.kind) {
    case "number":
    case "whole":
    case "date":
    case "quantity": {
      const limits = [
        ...(rule.least === undefined ? [] : [`(x<${bare(rule.least)})`]),
        ...(rule.most === undefined ? [] : [`(x>${bare(rule.most)})`]),
        ...(rule.kind === "whole" ? ["(IF(ISNUMBER(x),INT(x),0)<>x)"] : []),
      ].join("+");
      const isText = rule.kind === "quantity" ? 'IF(ISERROR(VALUE(LEFT(x,FIND(" ",x)-1))),1,0)' : "1";
      return `IF(ISNUMBER(x),IF(${limits || "0"}>0,1,0),${isText})`;
    }
    case "list":
      return `IF(${rule.values.map((value) => `(x&""=${quoted(value)})`).join("+")}=0,1,0)`;
    case "listFrom":
      return `IF(COUNTIF(${rule.range},x)=0,1,0)`;
    case "textLength":
      return `IF(LEN(x)>${rule.most},1,0)`;
    case "formula":
      // Excel's rule reads the cell itself; here only blanks and errors are seen, the rest is the book's own check.
      return "0";
  }
};

const wanted = ({ rule, refusal }: Validation): string => {
  const isNumber = rule.kind !== "list" && rule.kind !== "listFrom" && rule.kind !== "textLength";
  const words = quoted(refusal ? `. ${refusal.words}` : "");
  return isNumber ? `IF(ISTEXT(v)," holds text: "&LEFT(v,40)," is "&v)&${words}` : `" is "&LEFT(v,40)&${words}`;
};

/**
 * "ok", or which cell of a column of entries with one rule is to be checked and why. `column` and `first` place its first
 * row, `from` and `to` are full addresses.
 */
export const ruleFormula = (
  validation: Validation,
  place: { sheet: string; column: string; first: number; range: string; rows: number },
): string => {
  const blank = validation.blankPasses === false ? 1 : 0;
  const bad = `IF(ISERROR(x),1,IF(x="",${blank},${broken(validation)}))`;
  const reason = `IF(ISERROR(v)," holds an error",IF(v=""," is blank",${wanted(validation)}))`;
  const cell = `${place.sheet}!${place.column}`;
  return place.rows === 1
    ? `=LET(x,${place.range},v,x,IF(${bad}=0,"ok",${quoted(`${cell}${place.first}`)}&${reason}))`
    : `=LET(x,${place.range},bad,${bad},k,IFERROR(MATCH(1,bad,0),1),v,INDEX(x,k,1),IF(SUM(bad)=0,"ok",${quoted(cell)}&(k+${place.first - 1})&${reason}))`;
};
