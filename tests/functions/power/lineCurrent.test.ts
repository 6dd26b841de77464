import fc from "fast-check";
import { evenly } from "../../evenly";
import { lineCurrent } from "../../../src/functions/power/lineCurrent";

const current = (power: unknown, ...rest: unknown[]): any =>
  lineCurrent(...([power, ...rest].map((each) => [[each]]) as [any, any]))[0]![0];

describe("LINE_CURRENT", () => {
  it("agrees with S = V I: 5.76 kVA at 240 V is 24 A", () => {
    expect(current(5.76, 240, 1)).toBeCloseTo(24, 9);
  });

  it("agrees with printed full-load tables of generators: 100 kW, 480 V, three phases, 0.8 is 150 A (trade tables, from memory)", () => {
    expect(current(100, 480, 0.8, 3)).toBeCloseTo(150.4, 1);
  });

  it("gives back the power: √3 V I cos φ", () => {
    fc.assert(
      fc.property(evenly(0.1, 500), fc.integer({ min: 100, max: 1000 }), evenly(0.1, 1), (kw, volts, factor) => {
        expect((Math.sqrt(3) * volts * current(kw, volts, factor, 3) * factor) / 1000).toBeCloseTo(kw, 6);
        expect((volts * current(kw, volts, factor, 1) * factor) / 1000).toBeCloseTo(kw, 6);
      }),
    );
  });

  it("reads horsepower as power and refuses two phases and a current as power", () => {
    expect(current("1 hp", 230, 1)).toBeCloseTo(745.6998716 / 230, 6);
    expect(current(5, 230, 1, 2).message).toContain("phases must be 1 or 3");
    expect(current("5 A", 230).message).toContain("is a current");
  });
});
