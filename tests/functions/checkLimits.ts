import { CellError } from "../../src/cells/cellValues";
import { oneCell } from "./oneCell";

/**
 * The lowest and the highest number that an argument takes, written by hand with the reason; none is read from the code.
 * "open" where there is none.
 */
export interface Limit {
  readonly argument: string;
  readonly low: number | "open";
  readonly high: number | "open";
  readonly why: string;
  /** The ends themselves are refused. */
  readonly endsOut?: "low" | "high" | "both";
}

type CellFunction = (...cells: any[]) => any[][];

/**
 * Checks each limit from both sides: a hair inside it passes, the end itself passes or, where it is out, is refused, a hair
 * beyond it is refused with the argument named.
 *
 * @param cells Arguments that give an answer; the one on trial is replaced
 * @param names All arguments in order
 */
export function checkLimits(
  id: string,
  call: CellFunction,
  names: readonly string[],
  cells: readonly unknown[],
  limits: readonly Limit[],
): void {
  const answer = (index: number, value: number): unknown =>
    oneCell(call, ...names.map((_, at) => (at === index ? value : cells[at])));
  const refused = (index: number, value: number): boolean => {
    const got = answer(index, value);
    return got instanceof CellError && got.code === "#VALUE!" && got.message.startsWith(names[index]!);
  };
  describe(`limits of ${id}`, () => {
    test.each(limits.map((limit) => [limit.argument, limit.low, limit.high, limit.why, limit] as const))(
      "%s from %s to %s: %s",
      (argument, low, high, _why, { endsOut }) => {
        const index = names.indexOf(argument);
        expect(index).toBeGreaterThanOrEqual(0);
        for (const [end, out, side] of [
          [low, -1, "low"],
          [high, 1, "high"],
        ] as const) {
          if (end === "open") {
            expect({ end, refused: refused(index, out * 1e7) }).toEqual({ end, refused: false });
            continue;
          }
          const hair = 1e-6 * Math.max(1, Math.abs(end));
          expect({ end, refused: refused(index, end) }).toEqual({
            end,
            refused: endsOut === side || endsOut === "both",
          });
          expect({ inside: end, refused: refused(index, end - out * hair) }).toEqual({ inside: end, refused: false });
          expect({ beyond: end, refused: refused(index, end + out * hair) }).toEqual({ beyond: end, refused: true });
        }
      },
    );
  });
}
