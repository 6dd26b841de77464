import fc from "fast-check";
import { evenly } from "../../evenly";
import { tieDownsNeeded } from "../../../src/functions/moving/tieDownsNeeded";

const straps = (mass: unknown, length: unknown, workingLoad: unknown): any =>
  tieDownsNeeded([[mass]], [[length]], [[workingLoad]])[0]![0];

describe("TIE_DOWNS_NEEDED", () => {
  it.each([
    ["(1) 5 ft and 1100 lb or less", "1100 lb", "5 ft", 1],
    ["(2)(i) 5 ft or less, over 1100 lb", "1101 lb", "4 ft", 2],
    ["(2)(ii) over 5 ft, however light", "100 lb", "5.1 ft", 2],
    ["(2)(ii) up to 10 ft", "100 lb", "10 ft", 2],
    ["(3) a fraction beyond the first 10 ft", "100 lb", "10.1 ft", 3],
    ["(3) 20 ft", "100 lb", "20 ft", 3],
    ["(3) 31 ft", "100 lb", "31 ft", 5],
  ])("follows 49 CFR 393.110(b) %s", (_part, mass, length, wanted) => {
    expect(straps(mass, length, 1e6)).toBe(wanted);
  });

  it.each([
    [100, 3],
    [50, 6],
    [200, 3],
  ])(
    "agrees with the worked case of a driving manual: 600 kg, 3.65 m, straps of %d kg (Canadian Standard 10, same counts)",
    (workingLoad, wanted) => {
      expect(straps(600, 3.65, workingLoad)).toBe(wanted);
    },
  );

  it("holds at least half the mass, and one strap fewer would break one of the two rules", () => {
    const mass = evenly(1, 20000);
    fc.assert(
      fc.property(mass, evenly(0.1, 15), evenly(50, 5000), (kg, metres, load) => {
        const needed = straps(kg, metres, load);
        expect(needed * load).toBeGreaterThanOrEqual((kg / 2) * (1 - 1e-9));
        const tooWeak = (needed - 1) * load < (kg / 2) * (1 + 1e-9);
        const tooFew = needed - 1 < straps(kg, metres, 1e9);
        expect(tooWeak || tooFew).toBe(true);
      }),
    );
  });

  it("doubles by load when each strap counts half", () => {
    expect(straps(8000, 2, 1000)).toBe(4);
    expect(straps(8000, 2, 500)).toBe(8);
  });
});
