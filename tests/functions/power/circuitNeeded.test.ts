import fc from "fast-check";
import { evenly } from "../../evenly";
import { circuitNeeded } from "../../../src/functions/power/circuitNeeded";
import reference from "../../reference/electricity.json";

const circuit = (current: unknown, continuous?: unknown): any =>
  circuitNeeded([[current]], continuous === undefined ? undefined : [[continuous]])[0]![0];

/** NEC 240.6(A), as a second transcription prints it in one line; typed apart from the product's list. */
const printed =
  "15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000";

describe("CIRCUIT_NEEDED", () => {
  it("answers each standard size of NEC 240.6(A) for itself, and the next for a little more", () => {
    const sizes = printed.split(" ").map(Number);
    expect(sizes).toHaveLength(37);
    sizes.forEach((size, index) => {
      expect(circuit(size, false)).toBe(size);
      if (index + 1 < sizes.length) expect(circuit(size + 0.01, false)).toBe(sizes[index + 1]);
    });
  });

  it("carries 24 A continuously on 30 A (NEC 210.20(A)) and not 24.01 A", () => {
    const { inputs, expected } = reference.find((each) => each.id === "nec-continuous") as any;
    expect(circuit(expected)).toBe(inputs.breaker_A);
    expect(circuit(expected + 0.01)).toBe(35);
  });

  it("is not lifted a size by floating noise", () => {
    expect(circuit(24 * (1 + 2e-16))).toBe(30);
    expect(circuit(20 * (1 + 4e-16), false)).toBe(20);
  });

  it("never falls as the current rises, and a continuous load never asks for less", () => {
    const current = evenly(0, 4000);
    fc.assert(
      fc.property(current, current, (a, b) => {
        expect(circuit(Math.max(a, b))).toBeGreaterThanOrEqual(circuit(Math.min(a, b)));
        expect(circuit(a)).toBeGreaterThanOrEqual(circuit(a, false));
      }),
    );
  });

  it("answers #N/A above 4800 A continuous", () => {
    expect(circuit(4800)).toBe(6000);
    expect(circuit(4801).code).toBe("#N/A");
  });
});
