import fc from "fast-check";
import { latentHeat } from "../../../src/functions/amounts/latentHeat";
import { vaporiserDuty } from "../../../src/functions/transferring/vaporiserDuty";
import { evenly } from "../../evenly";
import rows from "../../reference/vesselsAndHoses.json";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test.each(rows.filter((row) => row.id.startsWith("duty")).map((row) => [row.id, row.inputs as any] as const))(
  "reference row %s",
  (id, { flow, celsius, gauge }) => {
    expectRow(id, oneNumber(vaporiserDuty, flow, celsius, gauge), 2e-5);
  },
);

test("handbook values at 1 atm, from memory: 213.1 kJ/kg and 0.913 kJ/(kg·K) from −183 °C on, gas of 1.3265 kg/m³", () => {
  const byHand = (100 / 60000) * 1.3265 * (213.1 + 0.913 * (21.1 + 182.96));
  expect(oneNumber(vaporiserDuty, 100) / byHand).toBeCloseTo(1, 2);
});

test("in proportion to the flow, more for warmer gas, and more than the latent heat alone", () => {
  fc.assert(
    fc.property(evenly(1, 1000), evenly(-40, 55), evenly(0, 14.8), (flow, celsius, pressure) => {
      const duty = oneNumber(vaporiserDuty, flow, celsius, pressure);
      expect(oneNumber(vaporiserDuty, 2 * flow, celsius, pressure) / duty).toBeCloseTo(2, 9);
      expect(oneNumber(vaporiserDuty, flow, celsius + 5, pressure)).toBeGreaterThan(duty);
      expect(duty).toBeGreaterThan((flow / 60000) * 1.3265 * oneNumber(latentHeat, pressure));
    }),
  );
  expect(oneNumber(vaporiserDuty, 0)).toBe(0);
});

test("the defaults are gas of 21.1 °C from an open vessel; out of range and bare psi are refused", () => {
  expect(oneNumber(vaporiserDuty, 100)).toBe(oneNumber(vaporiserDuty, 100, 21.1, 0));
  expect(oneNumber(vaporiserDuty, 100, "32 °F", "22 psi")).not.toBe(oneNumber(vaporiserDuty, 100, "32 °F"));
  expect(errorOf(vaporiserDuty, 100, 61)).toMatch(/#VALUE! gas_temperature must be between -40 and 60 °C/);
  expect(errorOf(vaporiserDuty, 100, 21.1, 22)).toMatch(/#VALUE! pressure 22 looks like psi/);
  expect(errorOf(vaporiserDuty, "1.5 L/h")).toMatch(/#VALUE! flow "1.5 L\/h" is a make rate/);
});
