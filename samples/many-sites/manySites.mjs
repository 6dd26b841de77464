/**
 * Plans 30 days of many sites on several threads, with the functions as a library. All sites are invented.
 *
 *   npm run library
 *   node samples/many-sites/manySites.mjs [sites, 10000 if left out] [threads]
 *
 * It says which sites run short first, and which could not be answered: a site whose entry is blank, mistyped or in
 * another unit is never counted among the covered ones.
 */
import { availableParallelism } from "node:os";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { dateOf, deratedRate, firstShortDate, isError, serialOf } from "oxygen-supply-functions";

const days = 30;
const dates = Array.from({ length: days }, (_, day) => new Date(Date.UTC(2026, 5, 1 + day)));
const every = (value) => new Array(days).fill(value);

/** An invented site: its figures follow from its number; one in 500 has an entry that nobody checked. */
export function siteAt(number) {
  const spread = (step, from, to) => from + ((number * step) % 101) * ((to - from) / 100);
  const site = {
    name: `Site ${String(number).padStart(5, "0")}`,
    altitude: spread(37, 0, 2900),
    warmest: spread(53, 18, 41),
    plants: 1 + (number % 3),
    ratedRate: 1.6,
    capacity: 60,
    opening: spread(17, 40, 170),
    needPerDay: spread(29, 5, 24),
    hoursOfPower: 24 - (number % 5) * 2,
    delivery: number % 4 === 0 ? 90 : 0,
  };
  if (number % 500 === 7) site.needPerDay = null;
  if (number % 500 === 11) site.altitude = "2400 m asl";
  return site;
}

/** The first day on which a site falls short: a serial; undefined where these days are covered; or words to check. */
export function answer(site) {
  const rate = deratedRate(site.ratedRate, site.altitude, site.warmest);
  if (isError(rate)) return { check: rate.message };
  const received = every(0);
  for (let day = 9; day < days; day += 10) received[day] = site.delivery;
  const short = firstShortDate(
    dates,
    every(site.needPerDay),
    received,
    every(site.hoursOfPower),
    [[site.plants, "2026-05-01", 3, rate, site.capacity]],
    Math.min(site.opening, site.plants * site.capacity),
    1.25,
    8,
    3,
  );
  if (!isError(short)) return { short };
  return short.code === "#N/A" && short.message.startsWith("no shortfall") ? {} : { check: short.message };
}

if (isMainThread) {
  const [sites = 10000, threads = availableParallelism()] = process.argv.slice(2).map(Number);
  if (!(Number.isInteger(sites) && sites > 0 && Number.isInteger(threads) && threads > 0)) {
    console.error("Give whole numbers above 0: how many sites, and how many threads.");
    process.exit(2);
  }
  const started = performance.now();
  const each = Math.ceil(sites / threads);
  const parts = await Promise.all(
    Array.from({ length: Math.ceil(sites / each) }, (_, part) => {
      const worker = new Worker(new URL(import.meta.url), {
        workerData: { from: part * each, to: Math.min(sites, (part + 1) * each) },
      });
      return new Promise((resolve, reject) => {
        worker.once("message", resolve);
        worker.once("error", reject);
      });
    }),
  );
  const answers = parts.flat();
  const short = answers.filter((each) => each.short !== undefined).sort((one, other) => one.short - other.short);
  const check = answers.filter((each) => each.check !== undefined);
  const iso = (serial) => dateOf(serial).toISOString().slice(0, 10);
  console.log(`${sites} sites, ${days} days from ${iso(serialOf(dates[0]))}: ${short.length} run short,`);
  console.log(`${check.length} could not be answered, ${sites - short.length - check.length} are covered in these days`);
  for (const { name, short: day } of short.slice(0, 10)) console.log(`  ${name} runs short on ${iso(day)}`);
  for (const { name, check: words } of check.slice(0, 5)) console.log(`  ${name} CHECK: ${words}`);
  console.error(`${parts.length} threads, ${Math.round(performance.now() - started)} ms`);
} else {
  const { from, to } = workerData;
  const answers = [];
  for (let number = from; number < to; number++) {
    const site = siteAt(number);
    answers.push({ name: site.name, ...answer(site) });
  }
  parentPort.postMessage(answers);
}
