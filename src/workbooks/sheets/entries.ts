import type { Validation } from "../writer";
import { dateLimits } from "./dateInput";
import { numberRule } from "./numberInput";

/** A number between two limits; the prompt says what, the refusal says the limits and what. */
export const numberEntry = (title: string, words: string, least: number, most: number): Validation =>
  numberRule(title, { words, least, most });

/** The same where the entry goes to functions alone: text such as "35 psi" passes. */
export const quantityEntry = (title: string, words: string, least: number, most: number): Validation =>
  numberRule(title, { words, least, most, units: true });

export const wholeEntry = (title: string, words: string, least: number, most: number): Validation =>
  numberRule(title, { words, least, most, whole: true });

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
