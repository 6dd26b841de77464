import type { Validation } from "../writer";

const limit = (value: number): string => value.toLocaleString("en-GB", { maximumFractionDigits: 6 });

/** A number between two limits; the prompt says what, the refusal says the limits. */
export const numberEntry = (title: string, words: string, least: number, most: number): Validation => ({
  rule: { kind: "number", least, most },
  prompt: { title, words },
  refusal: { title, words: `Enter a number from ${limit(least)} to ${limit(most)}.` },
  blankPasses: false,
});

export const wholeEntry = (title: string, words: string, least: number, most: number): Validation => ({
  rule: { kind: "whole", least, most },
  prompt: { title, words },
  refusal: { title, words: `Enter a whole number from ${limit(least)} to ${limit(most)}.` },
  blankPasses: false,
});

/** 2000-01-01 and 2099-12-31. */
const dateLimits = { least: 36526, most: 73050 };

export const dateEntry = (title: string, words: string, blankPasses = false): Validation => ({
  rule: { kind: "date", ...dateLimits },
  prompt: { title, words },
  refusal: { title, words: "Enter a date between 2000-01-01 and 2099-12-31." },
  blankPasses,
});

export const choiceEntry = (title: string, words: string, values: readonly string[]): Validation => ({
  rule: { kind: "list", values },
  prompt: { title, words },
  refusal: { title, words: "Choose from the list." },
  blankPasses: false,
});

export const wordsEntry = (title: string, words: string): Validation => ({
  rule: { kind: "textLength", most: 60 },
  prompt: { title, words },
  refusal: { title, words: "At most 60 characters." },
});

/** The same, for a row of a table that may stay empty. */
export const mayStayEmpty = (validation: Validation): Validation => ({ ...validation, blankPasses: true });

/** Excel shows TRUE and FALSE whatever the format; other programs show 1 and 0 without this one. */
export const truthFormat = '"TRUE";;"FALSE"';
