/** What a person asked for can't be done; the words say why and what to do. */
export class Misuse extends Error {
  constructor(
    words: string,
    /** Does the list of options help? */
    readonly needsUsage = false,
  ) {
    super(words);
  }
}
