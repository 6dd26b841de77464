/**
 * `npm run mutation -- --count 2000 --seed 1`: makes small mistakes in the product one at a time and sees whether the tests
 * notice. Exits with 1 where fewer than `--least` percent are, or where an ignored argument or a removed limit survives. Those that no
 * input can show are listed in equivalent.json, each with its reason, and left out.
 */
import { fork, type ChildProcess } from "node:child_process";
import path from "node:path";
import { parseArgs } from "node:util";
import listed from "./equivalent.json";
import { allMutants, sample, type Mutant } from "./mutants";

const { values } = parseArgs({
  options: {
    count: { type: "string", default: "2000" },
    seed: { type: "string", default: "1" },
    least: { type: "string", default: "95" },
    workers: { type: "string", default: "2" },
    only: { type: "string" },
    kind: { type: "string" },
  },
});

interface Outcome {
  readonly mutant: Mutant;
  /** The test that noticed, "" where none did. */
  readonly by: string;
}

/** A mistake that no input can show, with the reason. */
interface Equivalent extends Pick<Mutant, "file" | "line" | "from" | "to"> {
  readonly why: string;
}
const equivalent: readonly Equivalent[] = listed;

const isEquivalent = ({ file, from, to, line }: Mutant): boolean =>
  equivalent.some((each) => each.file === file && each.from === from && each.to === to && each.line === line);

const chosen = allMutants().filter(
  (mutant) => (!values.only || mutant.file.includes(values.only)) && (!values.kind || mutant.kind === values.kind),
);
const queue = sample(chosen, Number(values.count), Number(values.seed)).filter((mutant) => !isEquivalent(mutant));
const outcomes: Outcome[] = [];
const started = Date.now();
console.log(`${queue.length} of ${chosen.length} mutants, seed ${values.seed}`);

const told = ({ file, line, kind, from, to }: Mutant): string =>
  `${file}:${line} ${kind}: ${from.replace(/\s+/g, " ").slice(0, 70)} → ${to.replace(/\s+/g, " ").slice(0, 50)}`;

/** A worker takes mutants until there are none; one that goes round for ever ends with its worker, and counts as noticed. */
function work(): Promise<void> {
  return new Promise((resolve, reject) => {
    let child: ChildProcess;
    let mutant: Mutant | undefined;
    let timer: NodeJS.Timeout | undefined;
    const next = (): void => {
      mutant = queue.shift();
      if (mutant) child.send(mutant);
      else {
        child.removeAllListeners("exit");
        child.kill();
        resolve();
      }
    };
    const note = (by: string): void => {
      clearTimeout(timer);
      outcomes.push({ mutant: mutant!, by });
      if (by === "") console.log(`survives: ${told(mutant!)}`);
      mutant = undefined;
    };
    const start = (): void => {
      child = fork(path.join(__dirname, "worker.ts"), { execArgv: process.execArgv });
      child.on("message", (message: { ready?: true; allowed?: number; done?: true; by?: string }) => {
        if (message.ready) {
          next();
        } else if (message.allowed) {
          timer = setTimeout(() => child.kill("SIGKILL"), message.allowed);
        } else {
          note(message.by ?? "");
          next();
        }
      });
      child.on("exit", (code) => {
        if (!mutant) return reject(new Error(`A worker ended by itself (${code})`));
        note("out of time or out of memory");
        start();
      });
    };
    start();
  });
}

void Promise.all(Array.from({ length: Number(values.workers) }, () => work())).then(() => {
  const survivors = outcomes.filter(({ by }) => by === "");
  const kinds = [...new Set(outcomes.map(({ mutant }) => mutant.kind))].sort();
  for (const kind of kinds) {
    const those = outcomes.filter(({ mutant }) => mutant.kind === kind);
    const alive = those.filter(({ by }) => by === "").length;
    console.log(`${kind}: ${those.length - alive} of ${those.length}`);
  }
  const share = (100 * (outcomes.length - survivors.length)) / outcomes.length;
  const minutes = (Date.now() - started) / 60_000;
  console.log(
    `${outcomes.length - survivors.length} of ${outcomes.length} mutants noticed (${share.toFixed(1)} %), ${equivalent.length} equivalent ones listed, ${minutes.toFixed(1)} min`,
  );
  const forbidden = survivors.filter(({ mutant: { kind } }) => kind === "argument ignored" || kind === "limit removed");
  if (share < Number(values.least) || forbidden.length > 0) process.exitCode = 1;
});
