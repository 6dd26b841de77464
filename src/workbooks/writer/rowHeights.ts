import { fontSize } from "./theme";

/** Width of an average letter over that of a digit in the default font, taken a little wide so that no line is cut off. */
const letterOverDigit = 0.9;
const boldIsWider = 1.07;
const lineOverSize = 1.36;
const padding = 3;

/** Lines that words take in a given width in digits of the default font, broken at blanks. */
const linesOf = (words: string, width: number, letterWidth: number): number =>
  words.split("\n").reduce((lines, paragraph) => {
    let used = 0;
    let count = 1;
    for (const word of paragraph.split(" ")) {
      const length = word.length * letterWidth;
      if (used > 0 && used + letterWidth + length > width) {
        count++;
        used = length;
      } else {
        used += (used > 0 ? letterWidth : 0) + length;
      }
      while (used > width) {
        count++;
        used -= width;
      }
    }
    return lines + count;
  }, 0);

/**
 * Height in points that wrapped words need. Excel fits a row to its text by itself, except for merged cells: those
 * need a stated height.
 */
export const heightFor = (words: string, width: number, size = fontSize, bold = false): number => {
  const letterWidth = letterOverDigit * (size / fontSize) * (bold ? boldIsWider : 1);
  return Math.ceil(linesOf(words, Math.max(width - 1, 1), letterWidth) * size * lineOverSize + padding);
};
