/**
 * A stock plan simulated for comparison, with code of its own: each plant by quarters of an hour, the outage at the head of
 * its day; plain sums, no rounding to steps.
 */

export interface SimulatedKind {
  count: number;
  /** Quarters of an hour from the first midnight of the plan to the switch-on; below 0 before it. */
  on: number;
  /** Hours, in quarters */
  start: number;
  rate: number;
  capacity: number;
  /** Days on which it is out of order: to it as if there were no power. */
  down?: readonly boolean[];
}

export interface SimulatedPlan {
  need: readonly number[];
  received: readonly number[];
  /** Hours, in quarters */
  power: readonly number[];
  kinds: readonly SimulatedKind[];
  opening: number;
  ratio: number;
  emptyDays: number;
  restart: number;
  sameDay: boolean;
}

export interface SimulatedDay {
  opening: number;
  made: number;
  received: number;
  drawn: number;
  "boil-off": number;
  vented: number;
  closing: number;
  short: number;
  "held back": number;
  room: number;
}

const quartersADay = 96;

/** Hours in which a plant makes liquid, day by day. */
export function quartersMade({ on, start }: SimulatedKind, power: readonly number[], restart: number): number[] {
  let toStart = start * 4;
  let toRestart = 0;
  let hasRun = false;
  // Power is taken as there all the time before the plan begins.
  for (let quarter = on; quarter < 0; quarter++) {
    hasRun = true;
    if (toStart > 0) toStart--;
  }
  return power.map((hours, day) => {
    const dark = quartersADay - hours * 4;
    const runs = Array.from({ length: quartersADay }, (_, at) => at >= dark && day * quartersADay + at >= on);
    hasRun ||= runs.includes(true);
    if (dark > 0 && hasRun) toRestart = restart * 4;
    let made = 0;
    for (const running of runs) {
      if (!running) continue;
      if (toStart > 0) toStart--;
      else if (toRestart > 0) toRestart--;
      else made++;
    }
    return made / 4;
  });
}

export function simulatedPlan(plan: SimulatedPlan): SimulatedDay[] {
  const powers = plan.kinds.map(({ down }) => plan.power.map((power, day) => (down?.[day] ? 0 : power)));
  const hours = plan.kinds.map((kind, at) => quartersMade(kind, powers[at]!, plan.restart));
  let level = plan.opening;
  return plan.need.map((need, day) => {
    let [room, gone] = [0, 0];
    plan.kinds.forEach(({ on, count, capacity }, at) => {
      if (on >= (day + 1) * quartersADay) return;
      room += count * capacity;
      gone += ((count * capacity) / plan.emptyDays) * ((24 - powers[at]![day]!) / 24);
    });
    const canMake = plan.kinds.reduce((sum, { count, rate }, kind) => sum + count * rate * hours[kind]![day]!, 0);
    const opening = level;
    const wanted = need * plan.ratio;
    const offered = plan.received[day]!;
    const boilOff = gone > level ? level : gone;
    level -= boilOff;
    let [drawn, vented] = [0, 0];
    const draw = (most: number): void => {
      drawn = wanted > most ? most : wanted;
      level -= drawn;
    };
    const deliver = (): void => {
      level += offered;
      vented = level > room ? level - room : 0;
      level -= vented;
    };
    if (plan.sameDay) {
      deliver();
      draw(level + canMake);
    } else {
      draw(level);
      deliver();
    }
    const made = level + canMake > room ? room - level : canMake;
    level += made;
    return {
      opening,
      made,
      received: offered,
      drawn,
      "boil-off": boilOff,
      vented,
      closing: level,
      short: wanted - drawn,
      "held back": canMake - made,
      room,
    };
  });
}
