/** Electricity from the plug to the plant: currents, circuits, cables, generators and their fuel. */
import { exceeds, rounding } from "./exceeds";
import { horsepower } from "./unitFactors";

/**
 * Standard ampere ratings of fuses and inverse-time circuit breakers [A]: NEC (NFPA 70) 240.6(A), table, read in
 * transcriptions of the 2017 and 2023 editions. The ratings 1, 3, 6, 10 and 601 A, which exist for fuses alone, are left out.
 */
export const standardCircuits: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
  700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** Share of a continuous current that a circuit must carry: NEC 210.20(A). */
const continuousShare = 1.25;

/** Resistivity of standard annealed copper at 20 °C [Ω·mm²/m], 1/58 rounded: IEC 60028. */
const copperResistivity = 0.017241;

/** Temperature below 0 °C at which the resistance of annealed copper, drawn on as a straight line, would be nil [°C]: IEC 60028. */
const copperZero = 234.5;

/** Kilowatts of `counts` things of `watts` each, of which `useShare` run at once. */
export const powerLoad = (counts: readonly number[], watts: readonly number[], useShare: number): number =>
  (counts.reduce((total, count, index) => total + count * watts[index]!, 0) * useShare) / 1000;

/** Conductors' share in the line: √3 of a three-phase line, whose voltage is from line to line. */
const lineFactor = (phases: number): number => (phases === 3 ? Math.sqrt(3) : 1);

/** Line current [A] of a power [kW] at a voltage [V], from line to line with three phases. */
export const lineCurrent = (power: number, voltage: number, powerFactor: number, phases: number): number =>
  (power * 1000) / (lineFactor(phases) * voltage * powerFactor);

/** Smallest standard circuit [A] for a current [A], or undefined above the largest; floating noise does not lift it a size. */
export function circuitFor(current: number, continuous: boolean): number | undefined {
  const wanted = current * (continuous ? continuousShare : 1);
  return standardCircuits.find((size) => !exceeds(wanted, size));
}

/** Resistance of a copper conductor [Ω/m] of an area [mm²] at its temperature [°C]. */
const copperResistance = (area: number, temperature: number): number =>
  ((copperResistivity / area) * (copperZero + temperature)) / (copperZero + 20);

/** Voltage lost along a copper cable [V]: current [A], length one way [m], area [mm²], conductor temperature [°C]. */
export const cableDrop = (current: number, length: number, area: number, temperature: number, phases: number): number =>
  (phases === 3 ? Math.sqrt(3) : 2) * current * length * copperResistance(area, temperature);

/** What a generator still gives [kW] at an altitude [m] and temperature [°C] above its thresholds; never below 0. */
export function generatorDerated(
  ratedPower: number,
  altitude: number,
  temperature: number,
  lossPer300m: number,
  lossPer5c: number,
  fromAltitude: number,
  fromTemperature: number,
): number {
  const byAltitude = 1 - (lossPer300m * Math.max(0, altitude - fromAltitude)) / 300;
  const byTemperature = 1 - (lossPer5c * Math.max(0, temperature - fromTemperature)) / 5;
  return ratedPower * Math.max(0, byAltitude) * Math.max(0, byTemperature);
}

/** Apparent power [kVA] that a motor of `motorPower` [kW] draws as it starts; it falls with the square of the voltage. */
export const startKva = (motorPower: number, kvaPerHorsepower: number, voltageDip: number): number =>
  (motorPower / horsepower) * kvaPerHorsepower * (1 - voltageDip) ** 2;

/**
 * Share by which a generator's voltage dips as a motor starts on it: both as impedances in line, the motor's 1/start kVA and
 * the generator's reactance/kVA, added as if in phase, which is never less than the sum of the two as they are.
 */
export const motorDip = (motorKva: number, generatorKva: number, reactance: number): number =>
  motorKva / (motorKva + generatorKva / reactance);

/** Hours [h] that a battery of so many kWh carries a load [kW]. */
export const batteryHours = (energy: number, load: number, usableShare: number, inverterShare: number): number =>
  (energy * usableShare * inverterShare) / load;

/** Rated power of solar panels [kW] for the energy of a day [kWh] in so many hours of full sun. */
export const solarPower = (dailyEnergy: number, sunHours: number, keptShare: number): number =>
  dailyEnergy / (sunHours * keptShare);

/**
 * Fuel [L/h] at a load share, straight between the maker's points (in rising order of load). Undefined outside them.
 */
export function fuelBetween(
  loadShare: number,
  loadPoints: readonly number[],
  fuelPoints: readonly number[],
): number | undefined {
  const last = loadPoints.length - 1;
  const noise = rounding * loadPoints[last]!;
  if (loadShare < loadPoints[0]! - noise || loadShare > loadPoints[last]! + noise) return undefined;
  const upper = Math.max(
    1,
    loadPoints.findIndex((point) => point >= loadShare - noise),
  );
  const [x0, x1] = [loadPoints[upper - 1]!, loadPoints[upper]!];
  const [y0, y1] = [fuelPoints[upper - 1]!, fuelPoints[upper]!];
  return y0 + ((y1 - y0) * (Math.min(Math.max(loadShare, x0), x1) - x0)) / (x1 - x0);
}

/** Energy [kWh] of a day: making for `makeHours` [h] at one power [kW], on standby at another for a share of the rest. */
export const dailyEnergy = (makePower: number, makeHours: number, standbyPower: number, standbyShare: number): number =>
  makePower * makeHours + standbyPower * standbyShare * (24 - makeHours);
