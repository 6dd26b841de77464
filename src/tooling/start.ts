/**
 * `npm start`: builds what is out of date, serves the local sheet over http and the add-in over https, says how to load
 * it into Excel, and opens the sheet.
 */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { host as addInHost } from "../catalogue/developmentHost.json";
import { findCertificate, type FoundCertificate } from "../server/certificate";
import { startStaticServer, type RunningServer, type ServerOptions } from "../server/staticServer";
import { buildIfNeeded, distFolder, projectFolder } from "./build";

/** Written in the manifest, so not a matter of choice. */
const addInPort = Number(new URL(addInHost).port);
const tries = 20;

const usage = `Serves the local sheet and the add-in, to this computer alone, until Ctrl+C.

  npm start                          builds what is out of date, serves, and opens the sheet in the browser
  npm start -- --no-open             does not open the browser
  npm start -- --port 3005           the local sheet at another port; 3001 if left out, the next free one if taken
  npm start -- --host 192.0.2.10     lets other computers in at this address
  npm start -- --trust               on Linux: asks sudo to trust the add-in's certificate
  npm start -- --help                this text
`;

class Misuse extends Error {}

/** Starts on the wished port, or on the next one that is free at both loopback addresses. */
const startNear = async (options: ServerOptions): Promise<RunningServer> => {
  for (let port = options.port; ; port++) {
    try {
      const server = await startStaticServer({ ...options, port });
      if (port !== options.port) console.log(`Port ${options.port} is taken by another program, so another is used.`);
      return server;
    } catch (fault) {
      if ((fault as NodeJS.ErrnoException).code !== "EADDRINUSE" || port >= options.port + tries) throw fault;
    }
  }
};

const openInBrowser = (address: string): void => {
  const [command, ...words] =
    process.platform === "win32"
      ? ["cmd", "/c", "start", "", address]
      : process.platform === "darwin"
        ? ["open", address]
        : ["xdg-open", address];
  spawn(command as string, words, { stdio: "ignore", detached: true })
    .on("error", () => undefined)
    .unref();
};

const hasScreen = (): boolean =>
  !process.env.CI && (process.platform !== "linux" || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY));

const aboutTrust = (certificate: FoundCertificate): string[] =>
  certificate.trusted
    ? []
    : [
        "",
        "This computer does not trust the add-in's certificate. Until it does, Excel on this computer will not load",
        "the add-in. Either run npm start on the computer with Excel and agree to its question, or add",
        `  ${certificate.authority}`,
        `to the trusted root authorities by hand (it is valid until ${certificate.expires.toISOString().slice(0, 10)}; remove it when you are done).`,
        `For Excel on the web it is enough to open ${addInHost}/about.html in the same browser and`,
        "agree to go on. The local sheet needs none of this.",
      ];

const aboutExcel = (folder: string): string[] => [
  "",
  "To load the add-in into Excel, while this runs, take one of the two files and one only:",
  `  Microsoft 365     ${path.join(folder, "manifest.xml")}`,
  `  Excel 2021, 2024  ${path.join(folder, "manifest-perpetual.xml")}`,
  "  On the web   In a workbook: Home > Add-ins > More Add-ins (or Advanced) > My Add-ins > Upload My Add-in, and",
  "               choose the file for Microsoft 365.",
  "  Windows      For trials: put the file into a shared folder; in Excel: File > Options > Trust Center > Trust",
  "               Center Settings > Trusted Add-in Catalogs, add the folder's network address, tick Show in Menu,",
  "               restart Excel; then Home > Add-ins > Advanced > Shared Folder > Oxygen Supply Functions > Add, again",
  "               in each new workbook.",
  "  Mac          For trials: copy the file into ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the",
  "               folder if it is missing), restart Excel; then Home > Add-ins (or Insert > My Add-ins, the small arrow).",
  "Then open samples/this-excel.xlsx, which says whether this Excel does what the other workbooks count on.",
];

const serveAddIn = async (host: string | undefined, trust: boolean): Promise<RunningServer | undefined> => {
  const mayAsk = process.platform === "linux" ? trust : Boolean(process.stdin.isTTY) && !process.env.CI;
  let certificate: FoundCertificate;
  try {
    certificate = await findCertificate(path.join(projectFolder, "build", "certificate"), mayAsk);
  } catch (fault) {
    console.log(`No certificate could be made (${(fault as Error).message}).`);
    console.log("Excel loads add-ins over https only, so the add-in is not served; the local sheet is.");
    return undefined;
  }
  try {
    const server = await startStaticServer({
      root: distFolder,
      port: addInPort,
      host,
      certificate,
      index: "pane.html",
    });
    console.log(`Add-in for Excel   ${addInHost}/`);
    console.log([...aboutTrust(certificate), ...aboutExcel(distFolder)].join("\n"));
    return server;
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code !== "EADDRINUSE") throw fault;
    console.log(
      `Port ${addInPort} is taken by another program, and the manifest names that port, so the add-in is not`,
    );
    console.log("served. Stop the other program and start again. The local sheet works meanwhile.");
    return undefined;
  }
};

const readOptions = () => {
  try {
    return parseArgs({
      options: {
        "no-open": { type: "boolean", default: false },
        port: { type: "string", default: "3001" },
        host: { type: "string" },
        trust: { type: "boolean", default: false },
        help: { type: "boolean", short: "h", default: false },
      },
    }).values;
  } catch (fault) {
    throw new Misuse((fault as Error).message);
  }
};

const start = async (): Promise<void> => {
  const values = readOptions();
  if (values.help) {
    console.log(usage.trimEnd());
    return;
  }
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Misuse(`--port wants a number from 0 to 65535, not "${values.port}".`);

  await buildIfNeeded(() => console.log("Building; this takes a minute or so."));
  const index = existsSync(path.join(distFolder, "sheet.html")) ? "sheet.html" : "pane.html";
  const sheet = await startNear({ root: distFolder, port, host: values.host, index });
  const address = `http://localhost:${sheet.port}/`;
  console.log("");
  console.log(`Local sheet        ${address}`);
  if (values.host) console.log(`Other computers can reach this one too, because --host ${values.host} asked for it.`);
  console.log("Ctrl+C stops it.");
  if (!values["no-open"] && hasScreen()) openInBrowser(address);
  console.log("");
  // Making a certificate takes a while, and the system may ask about it; the sheet needs none.
  const addIn = await serveAddIn(values.host, values.trust ?? false);

  const stop = (): void => {
    void Promise.all([sheet.close(), addIn?.close()]).then(() => process.exit(0));
  };
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
};

start().catch((fault: Error) => {
  console.error(fault instanceof Misuse ? `${fault.message}\n\n${usage.trimEnd()}` : fault.message);
  process.exitCode = fault instanceof Misuse ? 2 : 1;
});
