import { existsSync } from "node:fs";
import { findBrowser, likelyPlaces } from "../../src/tooling/browser";

const before = process.env.OXYGEN_BROWSER;
afterEach(() => {
  if (before === undefined) delete process.env.OXYGEN_BROWSER;
  else process.env.OXYGEN_BROWSER = before;
});

it("lists commands on the path of Linux in order", () => {
  const places = likelyPlaces("linux", { PATH: "/a:/b" });
  expect(places.slice(0, 2)).toEqual(["/a/chromium", "/b/chromium"]);
  expect(places).toContain("/b/microsoft-edge");
});

it("lists the applications of a Mac", () => {
  expect(likelyPlaces("darwin", { HOME: "/Users/ana" })).toContain(
    "/Users/ana/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  );
});

it("lists the program folders of Windows and leaves out unset ones", () => {
  const places = likelyPlaces("win32", { PROGRAMFILES: "C:\\Program Files" });
  expect(places).toContain("C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe");
  expect(places).toHaveLength(3);
});

it("lets OXYGEN_BROWSER win", () => {
  process.env.OXYGEN_BROWSER = process.execPath;
  expect(findBrowser()).toBe(process.execPath);
  process.env.OXYGEN_BROWSER = "none";
  expect(findBrowser()).toBeUndefined();
  process.env.OXYGEN_BROWSER = "/no/such/browser";
  expect(() => findBrowser()).toThrow("/no/such/browser");
});

it("finds only files that exist", () => {
  delete process.env.OXYGEN_BROWSER;
  const found = findBrowser();
  expect(found === undefined || existsSync(found)).toBe(true);
});
