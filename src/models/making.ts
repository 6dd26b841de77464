import { expansionRatio, gasReferenceCelsius, standardAtmosphere, zeroCelsius } from "./oxygen";
import { cutDownThings, roundUpThings } from "./wholeNumbers";

// Liquid in L, saturated at 1 atm; gas in L at 21.1 °C, 101.325 kPa; rates in L/h of liquid, net of standing loss; time in h.

/** Hours until full [h]: capacity and level [L], rate net of standing loss [L/h], start delay [h]. */
export const hoursToFill = (capacity: number, rate: number, level: number, startDelay: number): number =>
  startDelay + (capacity - level) / rate;

/** Liquid [L] that plants switched on together make in some hours [h]; nothing during the start delay [h]. */
export const liquidMade = (hours: number, rate: number, startDelay: number, plants: number): number =>
  Math.max(0, hours - startDelay) * rate * plants;

/** Hours [h] from switching on until plants have made what is needed [L]. */
export const hoursToMake = (need: number, rate: number, startDelay: number, plants: number): number =>
  startDelay + need / (rate * plants);

/** Level [L] some hours [h] after switching on; a full vessel stays full. */
export const levelAfter = (hours: number, capacity: number, rate: number, level: number, startDelay: number): number =>
  Math.min(capacity, level + liquidMade(hours, rate, startDelay, 1));

/** Gas at the patient [L] from liquid made [L]: a filled litre takes `drawRatio` litres out of the plant's vessel. */
export const gasAtPatient = (liquid: number, drawRatio: number): number =>
  (liquid / drawRatio) * expansionRatio(standardAtmosphere, gasReferenceCelsius + zeroCelsius, standardAtmosphere);

/** Gas flow at the patient [L/min] that plants running round the clock support. */
export const deliveredFlow = (rate: number, plants: number, drawRatio: number): number =>
  gasAtPatient(rate * plants, drawRatio) / 60;

/** Whole patients that a supply flow carries, both in L/min. */
export const patientsCarried = (supplyFlow: number, flowEach: number): number => cutDownThings(supplyFlow / flowEach);

/** Gas a day at the patient [L] from one plant that always runs. */
const dailyGasEach = (rate: number, drawRatio: number): number => gasAtPatient(24 * rate, drawRatio);

/**
 * Plants to bring: those that supply the daily gas when each runs only part of the time, and the spare ones.
 *
 * @param dailyGas L gas a day at the patient
 * @param availability Share of the time that a plant makes liquid
 */
export const plantsNeeded = (
  dailyGas: number,
  rate: number,
  spare: number,
  availability: number,
  drawRatio: number,
): number => roundUpThings(dailyGas / (dailyGasEach(rate, drawRatio) * availability)) + spare;

/** Share of what the plants can make that a daily gas [L] takes; above 1 they fall short. */
export const plantLoading = (dailyGas: number, rate: number, plants: number, drawRatio: number): number =>
  dailyGas / (dailyGasEach(rate, drawRatio) * plants);

/**
 * Whole fills a day that production sustains. n fills draw n·fill·ratio and stop the plant drawn from for n·m minutes in
 * all: n·fill·ratio = rate·(24·plants − n·m/60).
 *
 * @param minutesEach min
 */
export const fillsPerDay = (
  fillEach: number,
  rate: number,
  minutesEach: number,
  plants: number,
  drawRatio: number,
): number => cutDownThings((24 * plants * rate) / (fillEach * drawRatio + (rate * minutesEach) / 60));
