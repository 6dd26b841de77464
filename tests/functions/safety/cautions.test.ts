import { cautions } from "../../../src/functions/safety/cautions";
import { errorOf } from "../oneCell";

const steps = ["transfer", "gas supply", "cylinder filling", "drain", "ship", "receive", "site", "every result"];
const wordsOf = (step: string): string =>
  cautions([[step]])
    .slice(1)
    .map((line) => line[1])
    .join(" ");

test("all steps in order when none is asked for, each row with its step", () => {
  const all = cautions().slice(1);
  expect([...new Set(all.map((line) => line[0]))]).toEqual(steps);
  expect(cautions(null as any)).toEqual(cautions());
});

test.each(steps)("%s alone has its rows only, in the order of the whole list", (step) => {
  const rows = cautions([[step.toUpperCase()]]);
  expect(rows[0]).toEqual(["step", "caution"]);
  expect(rows.slice(1)).toEqual(cautions().filter((line) => line[0] === step));
  expect(rows.length).toBeGreaterThan(3);
});

// What the list must not leave out: common practice, no source.
test.each([
  ["transfer", [/−183 °C/, /face shield/i, /asphalt/, /oil/, /between two valves/, /pools low/, /full mark/]],
  ["gas supply", [/second supply/, /regulator/, /23\.5 %/, /clinician/]],
  ["cylinder filling", [/in date/, /stamped/, /slowly/, /oil/, /licensed/]],
  ["drain", [/outdoors/i, /larger than what is drained/, /never in a closed one/, /gloves/]],
  ["ship", [/UN 1073/, /upright/i, /relief valves/, /carrier/]],
  ["receive", [/bill of lading/, /lift/i]],
  ["site", [/1\.8 m/, /5°/, /asphalt or tile/, /unventilated/, /licensed electrician/]],
  ["every result", [/planning figure/, /clinician decides/]],
] as const)("%s says what it must", (step, patterns) => {
  for (const pattern of patterns) expect(wordsOf(step)).toMatch(pattern);
});

test.each(steps)("%s defers to local codes or authorities and to the manual of the maker", (step) => {
  expect(wordsOf(step)).toMatch(/local|authority/i);
  expect(wordsOf(step)).toMatch(/maker's manual/);
});

test("a step unknown is refused with the steps there are", () => {
  expect(errorOf(cautions, "cooking")).toMatch(
    /#VALUE! step is "cooking"; enter transfer, gas supply, .* or every result/,
  );
});
