/**
 * Correlations of oxygen, independent of the code under test. p, ρ liquid and ρ vapour: ancillary equations of the
 * CoolProp oxygen file (0.002 %, 0.09 %, 0.09 % from 0.5 to 25 bar). Heat of vaporisation (0.02 %, 88–134 K), liquid
 * enthalpy (±0.03 kJ/kg) and compressibility (0.09 %, 1–300 bar, −40…60 °C): fits made outside this project to the
 * equation of Schmidt and Wagner; provenance "computed".
 */
const criticalTemperature = 154.581;
const sum = (n: readonly number[], t: readonly number[], theta: number): number =>
  n.reduce((total, coefficient, i) => total + coefficient * theta ** t[i]!, 0);

/** bar absolute at T [K] */
export const correlatedPressure = (t: number): number =>
  50.43 *
  Math.exp(
    (criticalTemperature / t) *
      sum(
        [
          -7.645535357219451, 2.4214288702883655, 9.642620060548747, -10.094822869854763, -1.6856689587691926,
          1.2776407609527567,
        ],
        [1.019, 1.177, 2.44, 2.493, 5.646, 10.887],
        1 - t / criticalTemperature,
      ),
  );

/** kg/m³ at T [K] */
export const correlatedLiquidDensity = (t: number): number =>
  436.144 *
  (1 +
    sum(
      [
        2.398534228348317, -0.9602489731250617, 4.608521959548032, -4.459907685966375, 1.4756239105744295,
        -71.13005503778817,
      ],
      [0.398, 0.86, 1.704, 2.122, 4.266, 18.786],
      1 - t / criticalTemperature,
    ));

/** kg/m³ at T [K] */
export const correlatedVapourDensity = (t: number): number =>
  436.144 *
  Math.exp(
    (criticalTemperature / t) *
      sum(
        [
          -4.045898237284726, 13.351580368749335, -13.257394903986311, -0.5839929431960236, -2.395023810536666,
          -4.561062605120816,
        ],
        [0.311, 0.407, 0.472, 1.701, 4.684, 16.677],
        1 - t / criticalTemperature,
      ),
  );

/** kJ/kg at T [K], 88–134 K */
export const correlatedLatentHeat = (t: number): number => {
  const theta = 1 - t / criticalTemperature;
  return 293.044 * theta ** 0.38 + 81.882 * theta - 246.336 * theta ** 2 + 160.629 * theta ** 3;
};

/** kJ/kg of saturated liquid above that at the boiling point at 1 atm */
export const correlatedLiquidEnthalpy = (t: number): number => {
  const x = t - 90;
  return -0.309851 + 1.7068062 * x + 1.370931e-3 * x ** 2 + 2.8438e-5 * x ** 3 + 6.87315e-7 * x ** 4;
};

const compressibilityFit = [
  [-0.156722, 0.631753, -0.669299, 0.132449],
  [0.815081, -2.56613, 2.72572, -0.964547],
  [-0.624741, 1.94475, -2.03859, 0.72449],
  [0.11799, -0.364002, 0.377234, -0.132159],
];

/** Z at bar absolute and K */
export const correlatedCompressibility = (pressureBar: number, t: number): number =>
  compressibilityFit.reduce(
    (z, row, k) => row.reduce((total, c, j) => total + c * (pressureBar / 100) ** (k + 1) * (t / 300) ** -j, z),
    1,
  );
