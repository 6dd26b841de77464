export interface TypedArgument {
  /** Name of the innermost function around the caret, as typed. */
  readonly name: string;
  /** From 0. */
  readonly index: number;
}

const pairs: Readonly<Record<string, string>> = { ")": "(", "}": "{", "]": "[" };

/** The function call the caret is in and which of its arguments, while the formula is still being typed. */
export const typedArgument = (formula: string, caret: number): TypedArgument | null => {
  if (!formula.startsWith("=")) return null;
  const open: { bracket: string; name: string; index: number }[] = [];
  let quote = "";
  let word = "";
  for (const character of formula.slice(1, caret)) {
    if (quote) {
      if (character === quote) quote = "";
      continue;
    }
    if (character === '"' || character === "'") quote = character;
    else if ("({[".includes(character)) open.push({ bracket: character, name: word, index: 0 });
    else if (character in pairs) {
      if (open.at(-1)?.bracket === pairs[character]) open.pop();
    } else if (character === ",") {
      const inner = open.at(-1);
      if (inner) inner.index++;
    }
    word = /[\p{L}\p{N}_.]/u.test(character) ? word + character : "";
  }
  if (quote) return null;
  const inner = open.filter(({ bracket }) => bracket === "(").at(-1);
  return inner?.name ? { name: inner.name.toUpperCase(), index: inner.index } : null;
};
