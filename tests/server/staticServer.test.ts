import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { connect, createServer, type AddressInfo } from "node:net";
import { get as secureGet } from "node:https";
import { networkInterfaces, tmpdir } from "node:os";
import path from "node:path";
import { generateCertificates } from "office-addin-dev-certs";
import { startStaticServer, type RunningServer } from "../../src/server/staticServer";

let folder: string;
let server: RunningServer;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "served-"));
  const root = path.join(folder, "dist");
  mkdirSync(path.join(root, "icons"), { recursive: true });
  writeFileSync(path.join(folder, "secret.txt"), "secret");
  mkdirSync(path.join(folder, "dist-other"));
  writeFileSync(path.join(folder, "dist-other", "secret.txt"), "secret");
  const files = [
    "index.html",
    "pane.html",
    "about.html",
    "a.js",
    "a.css",
    "a.json",
    "a.xml",
    "a.bin",
    ".hidden",
    "icons/a.png",
  ];
  for (const name of files) writeFileSync(path.join(root, name), `content of ${name}`);
  if (process.platform !== "win32") symlinkSync(path.join(folder, "secret.txt"), path.join(root, "link.txt"));
  server = await startStaticServer({ root, port: 0 });
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

const ask = (way: string, options?: RequestInit) => fetch(`http://127.0.0.1:${server.port}${way}`, options);

/** A request as it is written, since fetch tidies addresses up. */
const askRaw = (target: string, method = "GET"): Promise<string> =>
  new Promise((resolve, reject) => {
    let text = "";
    const socket = connect(server.port, "127.0.0.1", () =>
      socket.write(`${method} ${target} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`),
    );
    socket.on("data", (data) => (text += data.toString("latin1")));
    socket.on("end", () => resolve(text));
    socket.on("error", reject);
  });

// Types: IANA media types registry; JavaScript by RFC 9239.
it.each([
  ["/index.html", "text/html; charset=utf-8"],
  ["/a.js", "text/javascript; charset=utf-8"],
  ["/a.css", "text/css; charset=utf-8"],
  ["/a.json", "application/json; charset=utf-8"],
  ["/a.xml", "application/xml; charset=utf-8"],
  ["/icons/a.png", "image/png"],
  ["/a.bin", "application/octet-stream"],
])("%s is %s", async (way, type) => {
  const response = await ask(way);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe(type);
  expect(await response.text()).toBe(`content of ${way.slice(1)}`);
});

it("answers a folder with its index, and ignores the query", async () => {
  expect(await (await ask("/")).text()).toBe("content of index.html");
  expect(await (await ask("/a.js?v=1")).text()).toBe("content of a.js");
});

it("is reached over both loopback addresses where IPv6 exists", async () => {
  const hasIpv6 = Object.values(networkInterfaces()).some((each) => each?.some((one) => one.address === "::1"));
  if (hasIpv6) expect((await fetch(`http://[::1]:${server.port}/a.js`)).status).toBe(200);
});

it("listens on loopback only", async () => {
  const outside = Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    .find((one) => one.family === "IPv4" && !one.internal);
  if (outside) await expect(fetch(`http://${outside.address}:${server.port}/a.js`)).rejects.toThrow();
});

describe("nothing outside the folder", () => {
  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/icons/../../secret.txt",
    "/icons/%2e%2e/%2e%2e/secret.txt",
    "/..%5csecret.txt",
    "/..\\secret.txt",
    "/../dist-other/secret.txt",
    "//secret.txt",
    "/link.txt",
    "/.hidden",
    "/%00",
    "/%",
    "/C:/secret.txt",
    "secret.txt",
    "http://localhost/../secret.txt",
  ])("%s", async (target) => {
    const answer = await askRaw(target);
    expect(answer).toMatch(/^HTTP\/1\.1 40[04]/);
    expect(answer).not.toContain("secret\n");
    expect(answer.split("\r\n\r\n")[1]).not.toContain("secret");
  });
});

it("answers 404 for a missing file and 405 for other methods", async () => {
  expect((await ask("/missing.html")).status).toBe(404);
  const post = await ask("/a.js", { method: "POST", body: "x" });
  expect([post.status, post.headers.get("allow")]).toEqual([405, "GET, HEAD, OPTIONS"]);
});

it("answers HEAD without a body", async () => {
  const answer = await askRaw("/a.js", "HEAD");
  expect(answer).toMatch(/^HTTP\/1\.1 200/);
  expect(answer.split("\r\n\r\n")[1]).toBe("");
});

it("says 304 for what the asker has", async () => {
  const tag = (await ask("/a.js")).headers.get("etag") ?? "";
  expect((await ask("/a.js", { headers: { "If-None-Match": tag } })).status).toBe(304);
});

it.each(["/index.html", "/a.js", "/missing"])("guards %s with strict headers", async (way) => {
  const { headers } = await ask(way);
  expect(headers.get("x-content-type-options")).toBe("nosniff");
  expect(headers.get("referrer-policy")).toBe("no-referrer");
  const policy = headers.get("content-security-policy") ?? "";
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe-eval|\*|https?:/);
});

it("lets Excel frame the pane, and nobody any other page", async () => {
  expect((await ask("/about.html")).headers.get("content-security-policy")).toContain("frame-ancestors 'none'");
  expect((await ask("/pane.html")).headers.get("content-security-policy")).not.toContain("frame-ancestors");
});

it("lets Excel on the web read the functions from its own page", async () => {
  const answer = await ask("/a.json", { method: "OPTIONS" });
  expect(answer.status).toBe(204);
  expect(answer.headers.get("access-control-allow-origin")).toBe("*");
  expect(answer.headers.get("access-control-allow-private-network")).toBe("true");
});

it("refuses a taken port with the system's error", async () => {
  await expect(startStaticServer({ root: folder, port: server.port })).rejects.toMatchObject({ code: "EADDRINUSE" });
});

it("speaks https with a certificate for localhost", async () => {
  const silent = jest.spyOn(console, "log").mockImplementation(() => undefined);
  const files = ["ca.crt", "localhost.crt", "localhost.key"].map((name) => path.join(folder, "certificate", name)) as [
    string,
    string,
    string,
  ];
  await generateCertificates(...files, 2);
  silent.mockRestore();
  const secure = await startStaticServer({
    root: path.join(folder, "dist"),
    port: 0,
    certificate: { cert: readFileSync(files[1]), key: readFileSync(files[2]) },
  });
  const status = await new Promise((resolve, reject) => {
    secureGet({ host: "localhost", port: secure.port, path: "/a.js", ca: readFileSync(files[0]) }, (response) => {
      response.resume();
      resolve(response.statusCode);
    }).on("error", reject);
  });
  await secure.close();
  expect(status).toBe(200);
});

describe("ranges (RFC 9110, 14)", () => {
  const size = "content of a.bin".length;
  it.each([
    ["bytes=0-6", 206, "content", `bytes 0-6/${size}`],
    ["bytes=11-", 206, "a.bin", `bytes 11-15/${size}`],
    ["bytes=-3", 206, "bin", `bytes 13-15/${size}`],
    ["bytes=8-999", 206, "of a.bin", `bytes 8-15/${size}`],
    ["bytes=99-", 416, "", `bytes */${size}`],
    ["bytes=-0", 416, "", `bytes */${size}`],
    ["bytes=5-2", 200, "content of a.bin", null],
    ["bytes=0-1,4-5", 200, "content of a.bin", null],
    ["lines=1-2", 200, "content of a.bin", null],
  ])("%s", async (range, status, text, contentRange) => {
    const response = await ask("/a.bin", { headers: { Range: range } });
    expect([response.status, await response.text(), response.headers.get("content-range")]).toEqual([
      status,
      text,
      contentRange,
    ]);
  });

  it("are of the file that was begun, or the whole file comes", async () => {
    const tag = (await ask("/a.bin")).headers.get("etag") ?? "";
    const status = async (ifRange: string): Promise<number> =>
      (await ask("/a.bin", { headers: { Range: "bytes=0-1", "If-Range": ifRange } })).status;
    expect([await status(tag), await status('"another"')]).toEqual([206, 200]);
  });
});

it("gives way where another program has the port at the other loopback address", async () => {
  const other = createServer();
  const isThere = await new Promise<boolean>((resolve) => {
    other.once("error", () => resolve(false));
    other.listen({ port: 0, host: "::1", ipv6Only: true }, () => resolve(true));
  });
  if (!isThere) return;
  const { port } = other.address() as AddressInfo;
  await expect(startStaticServer({ root: folder, port })).rejects.toMatchObject({ code: "EADDRINUSE" });
  // What was opened before is closed again.
  const alone = await startStaticServer({ root: folder, port, host: "127.0.0.1" });
  await alone.close();
  await new Promise((resolve) => other.close(resolve));
});

it("closes the file of a download that is broken off", async () => {
  const descriptors = "/proc/self/fd";
  if (!existsSync(descriptors)) return;
  const large = path.join(folder, "dist", "large.bin");
  writeFileSync(large, Buffer.alloc(50_000_000));
  const opened = (): number =>
    readdirSync(descriptors).filter((each) => {
      try {
        return readlinkSync(path.join(descriptors, each)) === large;
      } catch {
        return false;
      }
    }).length;
  const sockets = Array.from({ length: 8 }, () => {
    const socket = connect(server.port, "127.0.0.1", () =>
      socket.write("GET /large.bin HTTP/1.1\r\nHost: localhost\r\n\r\n"),
    );
    return socket;
  });
  await Promise.all(sockets.map((socket) => new Promise((resolve) => socket.once("data", resolve))));
  expect(opened()).toBe(8);
  for (const socket of sockets) socket.destroy();
  for (let waited = 0; opened() > 0 && waited < 5000; waited += 50)
    await new Promise((resolve) => setTimeout(resolve, 50));
  expect(opened()).toBe(0);
});
