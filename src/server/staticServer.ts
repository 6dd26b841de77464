/** A small server for the files of one folder, for this computer alone unless asked otherwise. */
import { createReadStream } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import {
  createServer as createPlain,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from "node:http";
import { createServer as createSecure } from "node:https";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { pipeline } from "node:stream/promises";
import { byteRange } from "./byteRange";
import policies from "./contentSecurityPolicy.json";

export interface Certificate {
  cert: string | Buffer;
  key: string | Buffer;
}

export interface ServerOptions {
  /** The folder served. Nothing outside it can be read, through links neither. */
  root: string;
  /** 0 lets the system choose. */
  port: number;
  /** Address to listen on; left out, both loopback addresses. */
  host?: string;
  /** With it the server speaks https. */
  certificate?: Certificate;
  /** File shown for a folder's own address; `index.html` if left out. */
  index?: string;
}

export interface RunningServer {
  port: number;
  close(): Promise<void>;
}

const types: Record<string, string> = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".md": "text/markdown; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ".xml": "application/xml; charset=utf-8",
};

/** Excel on the web shows these two inside its own page. */
const framedByExcel = ["pane.html", "functions.html"];

const policyFor = (name: string): string => {
  if (!name.endsWith(".html")) return "default-src 'none'; frame-ancestors 'none'";
  const page = path.basename(name, ".html");
  const policy = (policies as Record<string, string>)[page] ?? policies.default;
  return framedByExcel.includes(name) ? policy : `${policy}; frame-ancestors 'none'`;
};

const headersFor = (name: string): Record<string, string> => ({
  "Content-Security-Policy": policyFor(name),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
  "Cache-Control": "no-cache",
  // Excel on the web reads functions.json and functions.js from its own page; nothing here is private.
  "Access-Control-Allow-Origin": "*",
  "Cross-Origin-Resource-Policy": "cross-origin",
});

const refuse = (response: ServerResponse, status: number, words: string): void => {
  response.writeHead(status, { ...headersFor(""), "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${words}\n`);
};

const isInside = (root: string, file: string): boolean => {
  const way = path.relative(root, file);
  return way !== ".." && !way.startsWith(`..${path.sep}`) && !path.isAbsolute(way);
};

/** The file a request names, below `root` and with links followed; undefined where there is none to give. */
const findFile = async (root: string, url: string, index: string): Promise<string | undefined> => {
  let asked: string;
  try {
    asked = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "");
  } catch {
    return undefined;
  }
  if (!asked.startsWith("/") || /[\0\\:]/.test(asked) || asked.split("/").some((part) => part.startsWith(".")))
    return undefined;
  const named = path.join(root, asked.endsWith("/") ? asked + index : asked);
  try {
    const file = await realpath(named);
    return isInside(root, file) && (await stat(file)).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
};

const answer = async (
  root: string,
  index: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> => {
  if (request.method === "OPTIONS") {
    response.writeHead(204, {
      ...headersFor(""),
      "Access-Control-Allow-Methods": "GET, HEAD",
      "Access-Control-Allow-Private-Network": "true",
    });
    response.end();
    return;
  }
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.setHeader("Allow", "GET, HEAD, OPTIONS");
    return refuse(response, 405, "Only GET, HEAD and OPTIONS are answered here.");
  }
  const file = await findFile(root, request.url ?? "", index);
  if (file === undefined) return refuse(response, 404, "There is no such file here.");
  const { size, mtimeMs } = await stat(file);
  const tag = `"${size.toString(36)}-${Math.floor(mtimeMs).toString(36)}"`;
  const name = path.relative(root, file).split(path.sep).join("/");
  const headers = {
    ...headersFor(name),
    "Content-Type": types[path.extname(file).toLowerCase()] ?? "application/octet-stream",
    ETag: tag,
  };
  if (request.headers["if-none-match"] === tag) {
    response.writeHead(304, headers);
    response.end();
    return;
  }
  // A range is only of use while the file is the one that was begun: RFC 9110, 13.1.5.
  const ifRange = request.headers["if-range"];
  const isSameFile = ifRange === undefined || ifRange === tag;
  const range = request.method === "GET" && isSameFile ? byteRange(request.headers.range, size) : undefined;
  if (range === "none") {
    response.writeHead(416, { ...headersFor(name), "Content-Range": `bytes */${size}` });
    response.end();
    return;
  }
  const { start, end } = range ?? { start: 0, end: size - 1 };
  response.writeHead(range ? 206 : 200, {
    ...headers,
    "Accept-Ranges": "bytes",
    "Content-Length": end - start + 1,
    ...(range ? { "Content-Range": `bytes ${start}-${end}/${size}` } : {}),
  });
  if (request.method === "HEAD" || size === 0) {
    response.end();
    return;
  }
  // Closes the file too when the asker leaves in between.
  await pipeline(createReadStream(file, { start, end }), response);
};

const listen = (server: Server, port: number, host: string): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen({ port, host, ipv6Only: host === "::1" }, () => {
      server.off("error", reject);
      resolve();
    });
  });

/** What the system says where there is no IPv6. */
const withoutIpv6 = new Set(["EADDRNOTAVAIL", "EAFNOSUPPORT", "EPROTONOSUPPORT"]);

const close = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });

/**
 * Serves a folder over http, or https when given a certificate.
 * @throws the system's error (EADDRINUSE, EACCES …) when the port can't be had at each address.
 */
export const startStaticServer = async (options: ServerOptions): Promise<RunningServer> => {
  const root = await realpath(options.root);
  const index = options.index ?? "index.html";
  const onRequest: RequestListener = (request, response) => {
    answer(root, index, request, response).catch(() => {
      if (response.headersSent) response.destroy();
      else refuse(response, 500, "The file could not be read.");
    });
  };
  const make = (): Server =>
    options.certificate ? (createSecure(options.certificate, onRequest) as unknown as Server) : createPlain(onRequest);

  const first = make();
  await listen(first, options.port, options.host ?? "127.0.0.1");
  const servers = [first];
  const { port } = first.address() as AddressInfo;
  if (options.host === undefined) {
    // `localhost` may mean either loopback address, so another program must not have the other one.
    const second = make();
    try {
      await listen(second, port, "::1");
      servers.push(second);
    } catch (fault) {
      if (!withoutIpv6.has((fault as NodeJS.ErrnoException).code ?? "")) {
        await close(first);
        throw fault;
      }
    }
  }
  return { port, close: async () => void (await Promise.all(servers.map(close))) };
};
