/** A number to check against, with where it comes from: "read", "computed" outside this project, or "memory". */
export interface ReferenceRow {
  readonly id: string;
  readonly inputs: Record<string, unknown>;
  readonly expected: number;
  readonly unit: string;
  /** Absolute */
  readonly tolerance: number;
  readonly source: string;
  readonly provenance: string;
  readonly note?: string;
}

export type Answers = Record<string, (inputs: any) => number>;

/**
 * One test a row, with the answers by row id; says at the end which row came nearest to its tolerance.
 *
 * @param closest Largest relative deviation allowed of rows computed from the same equation, where the tolerance of
 * the row leaves room for correlations
 */
export function checkRows(topic: string, rows: readonly ReferenceRow[], answers: Answers, closest?: number): void {
  describe(`${topic}: reference rows`, () => {
    let worst = { id: "", share: -1 };
    let largest = { id: "", deviation: -1 };

    test("each row has an answer and each answer a row", () => {
      expect(Object.keys(answers).sort()).toEqual(rows.map((row) => row.id).sort());
    });
    test.each(rows.map((row) => [row.id, row] as const))("%s", (id, row) => {
      const got = answers[id]!(row.inputs);
      const deviation = Math.abs(got - row.expected);
      if (deviation / row.tolerance > worst.share) worst = { id, share: deviation / row.tolerance };
      expect(deviation).toBeLessThanOrEqual(row.tolerance);
      if (closest !== undefined && row.provenance === "computed" && row.source.startsWith("Schmidt & Wagner")) {
        const relative = deviation / Math.abs(row.expected);
        if (relative > largest.deviation) largest = { id, deviation: relative };
        expect(relative).toBeLessThanOrEqual(closest);
      }
    });
    afterAll(() => {
      const same = largest.id && `; against the equation itself ${largest.deviation.toExponential(1)} (${largest.id})`;
      process.stdout.write(
        `${topic}: ${rows.length} rows, worst ${(worst.share * 100).toFixed(1)} % of its tolerance (${worst.id})${same}\n`,
      );
    });
  });
}
