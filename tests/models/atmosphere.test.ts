import fc from "fast-check";

import {
  airDensity,
  airDensityRatio,
  airPressure,
  altitudeFromPressure,
  seaLevelAirDensity,
  standardTemperature,
} from "../../src/models/atmosphere";
import { deratedRate, fitDerating, interpolateTable, ratedShare, startDelay } from "../../src/models/derating";
import atmosphereRows from "../reference/atmosphere.json";
import deratingRows from "../reference/derating.json";
import isoTable from "../reference/iso2533.json";
import { type Answers, checkRows } from "../reference/rows";
import { evenly } from "../evenly";

// Nominal radius of the earth in ISO 2533.
const earthRadius = 6356766;
const geopotential = (i: any): number =>
  (earthRadius * i.geometric_altitude_m) / (earthRadius + i.geometric_altitude_m);
const pressure = (i: any): number => airPressure(geopotential(i));
const density = (i: any): number => airDensity(geopotential(i), standardTemperature(geopotential(i)));

/** Altitude whose standard density is that of a place: bisection, as no model needs it. */
const densityAltitude = (i: any): number => {
  const wanted = airDensity(i.pressure_altitude_m, i.T_C);
  let low = -500;
  let high = 11000;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (airDensity(middle, standardTemperature(middle)) > wanted) low = middle;
    else high = middle;
  }
  return low;
};

const answers: Answers = {
  "isa-p-geom-500": pressure,
  "isa-p-geom-1500": pressure,
  "isa-p-geom-2000": pressure,
  "isa-p-geom-3000": pressure,
  "isa-p-geom-5000": pressure,
  "isa-rho-geom-3000": density,
  "isa-rho-geom-5000": density,
  "isa-T-geop-1500": (i) => standardTemperature(i.geopotential_altitude_m),
  "da-1500-35": densityAltitude,
  "da-0-40": densityAltitude,
  "po2-1500": (i) => airPressure(i.altitude_m_geopotential) * i.FO2,
  "pio2-3000": (i) => (airPressure(i.altitude_m_geopotential) - i.pH2O_kPa) * i.FiO2,
};
checkRows("atmosphere", atmosphereRows, answers);

const altitudes = evenly(-500, 11000);

describe("atmosphere", () => {
  // The table prints six significant figures: half a unit of the last one.
  test.each(isoTable.rows as [number, number, number, number][])(
    "ISO 2533 table 5 at %d m",
    (altitude, celsius, millibar, rho) => {
      expect(standardTemperature(altitude)).toBeCloseTo(celsius, 9);
      expect(Math.abs(airPressure(altitude) * 10 - millibar) / millibar).toBeLessThan(5.1e-6);
      expect(Math.abs(airDensity(altitude, celsius) - rho) / rho).toBeLessThan(5.1e-6);
      expect(Math.abs(altitudeFromPressure(millibar / 10) - altitude)).toBeLessThan(0.06);
    },
  );

  test("pressure and altitude are each other's inverse, and pressure falls", () => {
    fc.assert(
      fc.property(altitudes, (h) => {
        expect(Math.abs(altitudeFromPressure(airPressure(h)) - h)).toBeLessThan(1e-8);
        expect(airPressure(h + 1)).toBeLessThan(airPressure(h));
      }),
    );
  });

  test("density ratio is 1 at sea level and 15 °C", () => {
    expect(Math.abs(airDensityRatio(0, 15) - 1)).toBeLessThan(1e-6);
    expect(airDensityRatio(0, 30)).toBeCloseTo((288.15 / 303.15) * 1, 6);
    expect(seaLevelAirDensity).toBe(1.225);
  });
});

// table[temperature][altitude], as the rows give it.
const bilinear = (i: any): number => interpolateTable(i.T_C, i.alt_m, i.T_axis_C, i.alt_axis_m, i.table) as number;
checkRows("derating", deratingRows, {
  bilinear,
  "bilinear-2": bilinear,
  "derate-default": (i) => ratedShare(i.altitude_m_geopotential, i.T_C, 0.01, i.T_ref_C),
});

describe("derating", () => {
  test("never above rated, never below nothing", () => {
    fc.assert(
      fc.property(altitudes, evenly(-40, 60), evenly(0, 0.1), (altitude, celsius, loss) => {
        const rate = deratedRate(3, altitude, celsius, loss, 21.1);
        expect(rate).toBeGreaterThanOrEqual(0);
        expect(rate).toBeLessThanOrEqual(3);
        expect(deratedRate(3, altitude, celsius + 1, loss, 21.1)).toBeLessThanOrEqual(rate);
        expect(deratedRate(3, altitude + 1, celsius, loss, 21.1)).toBeLessThanOrEqual(rate);
      }),
    );
    expect(deratedRate(2, -500, 15, 0.01, 21.1)).toBe(2);
    expect(deratedRate(2, 0, 60, 0.05, 21.1)).toBe(0);
  });

  test("a table gives its own entries, a plane exactly, and nothing outside", () => {
    fc.assert(
      fc.property(evenly(0, 3000), evenly(10, 40), (altitude, celsius) => {
        const rows = [0, 700, 3000];
        const columns = [10, 25, 30, 40];
        const plane = (h: number, t: number): number => 5 - h / 1000 - t / 40;
        const table = rows.map((h) => columns.map((t) => plane(h, t)));
        expect(interpolateTable(altitude, celsius, rows, columns, table)).toBeCloseTo(plane(altitude, celsius), 9);
        const upsideDown = interpolateTable(altitude, celsius, [...rows].reverse(), columns, [...table].reverse());
        expect(upsideDown).toBeCloseTo(plane(altitude, celsius), 9);
        expect(interpolateTable(700, 30, rows, columns, table)).toBe(plane(700, 30));
        expect(interpolateTable(3000, 40, rows, columns, table)).toBe(plane(3000, 40));
      }),
    );
    const table = [
      [1, 2],
      [3, 4],
    ];
    expect(interpolateTable(-1, 15, [0, 1], [10, 20], table)).toBe("row outside");
    expect(interpolateTable(0.5, 20.1, [0, 1], [10, 20], table)).toBe("column outside");
    expect(interpolateTable(0, 15, [0], [10, 20], [[1, 2]])).toBe(1.5);
    expect(interpolateTable(1, 15, [0], [10, 20], [[1, 2]])).toBe("row outside");
  });

  test("exact runs give their rate and loss back", () => {
    fc.assert(
      fc.property(
        evenly(0.5, 20),
        evenly(0.0005, 0.02),
        fc.array(fc.tuple(altitudes, evenly(0, 55)), { minLength: 2, maxLength: 12 }),
        (rated, loss, runs) => {
          // Two runs that tell the loss whatever the rest are.
          const all: [number, number][] = [[500, 22], [1200, 45], ...runs];
          const fit = fitDerating(
            all.map(([h]) => h),
            all.map(([, t]) => t),
            all.map(([h, t]) => deratedRate(rated, h, t, loss, 21.1)),
          );
          expect(fit.lossFitted).toBe(true);
          expect(Math.abs(fit.lossPerDegree - loss)).toBeLessThan(1e-9);
          expect(Math.abs(fit.ratedRate / rated - 1)).toBeLessThan(1e-9);
          expect(fit.residual).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test("scattered runs: no other loss or rate nearby misfits less", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(evenly(0, 4000), evenly(10, 50), evenly(0.8, 1.25)), { minLength: 3, maxLength: 10 }),
        (runs) => {
          const heights = [100, 1500, ...runs.map(([h]) => h)];
          const celsius = [25, 48, ...runs.map(([, t]) => t)];
          const scatter = [1.02, 0.97, ...runs.map(([, , s]) => s)];
          const rates = heights.map((h, i) => scatter[i]! * deratedRate(4, h, celsius[i]!, 0.008, 21.1));
          const misfit = (rated: number, loss: number): number =>
            Math.sqrt(
              rates.reduce(
                (sum, rate, i) => sum + Math.log(rate / deratedRate(rated, heights[i]!, celsius[i]!, loss, 21.1)) ** 2,
                0,
              ) / rates.length,
            );
          const fit = fitDerating(heights, celsius, rates);
          const here = misfit(fit.ratedRate, fit.lossPerDegree);
          expect(here).toBeCloseTo(fit.residual, 9);
          for (const [factor, shift] of [
            [1, 1e-4],
            [1, -1e-4],
            [1.001, 0],
            [0.999, 0],
            [1.001, 1e-4],
            [0.999, -1e-4],
            [1, 0.003],
            [1, -0.003],
          ] as const) {
            const loss = fit.lossPerDegree + shift;
            if (loss < 0 || loss * (Math.max(...celsius) - 21.1) >= 1) continue;
            expect(misfit(fit.ratedRate * factor, loss)).toBeGreaterThanOrEqual(here - 1e-12);
          }
        },
      ),
    );
  });

  test("runs that cannot tell the loss keep 0.01", () => {
    const one = fitDerating([800], [35], [deratedRate(2, 800, 35, 0.02, 21.1)]);
    expect(one.lossFitted).toBe(false);
    expect(one.lossPerDegree).toBe(0.01);
    expect(one.residual).toBeCloseTo(0, 12);
    const cold = fitDerating([0, 1000], [10, 21.1], [2, 2 * (airPressure(1000) / 101.325)]);
    expect([cold.lossFitted, cold.lossPerDegree]).toEqual([false, 0.01]);
    expect(cold.ratedRate).toBeCloseTo(2, 9);
    expect(fitDerating([-400, 1000], [5, 15], [2, 1.8]).lossFitted).toBe(false);
    const alike = fitDerating([0, 1000], [30, 30], [2, 1.9]);
    expect(alike.lossFitted).toBe(false);
    // Runs that got better with heat: no loss, rather than a gain.
    expect(fitDerating([0, 0], [25, 45], [2, 2.2]).lossPerDegree).toBe(0);
  });

  // Plain arithmetic of the rule.
  test("start delay", () => {
    expect(startDelay(25, 3, 1, 10)).toBe(3);
    expect(startDelay(10, 3, 1, 10)).toBe(3);
    expect(startDelay(9.9, 3, 1, 10)).toBe(4);
  });
});
