import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { inflateSync } from "node:zlib";
import { drawIcons } from "../../src/tooling/drawIcons";

const folder = path.resolve(__dirname, "..", "..", "manifest", "icons");

it("are what npm run icons draws", () => {
  const drawn = drawIcons();
  expect(readdirSync(folder).sort()).toEqual([...drawn.keys()].sort());
  for (const [name, bytes] of drawn)
    expect([name, readFileSync(path.join(folder, name)).equals(bytes)]).toEqual([name, true]);
});

// Layout of the header and of the rows: ISO/IEC 15948 (PNG), sections 11.2.2 and 7.
it.each(readdirSync(folder))("%s is a square picture of the size it is named after", (name) => {
  const bytes = readFileSync(path.join(folder, name));
  const size = Number(/\d+/.exec(name)?.[0]);
  expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
  expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20), bytes[24], bytes[25]]).toEqual([size, size, 8, 6]);
  const data = bytes.subarray(41, 41 + bytes.readUInt32BE(33));
  expect(inflateSync(data)).toHaveLength(size * (size * 4 + 1));
});
