import { utils } from "@e965/xlsx";
import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import { withoutFormulas } from "../../src/engine/file/writeWorkbook";
import { buildWorkbook, formats, withUnit } from "../../src/workbooks/writer";
import {
  absoluteReference,
  addressOf,
  areaOf,
  placeOf,
  quotedSheet,
  rangeOf,
  sheetAndRange,
} from "../../src/cells/addresses";
import { heightFor } from "../../src/workbooks/writer/rowHeights";
import { colours, marks, roles, seriesLooks, shades } from "../../src/workbooks/writer/theme";
import { SSF } from "@e965/xlsx";
import { demo, demoValues } from "./openXmlDemo";
import { readCells } from "./openXmlSecondReader";

describe("addresses", () => {
  test("agree with @e965/xlsx over the whole sheet", () => {
    fc.assert(
      fc.property(fc.nat(1_048_575), fc.nat(16_383), (row, column) => {
        const address = utils.encode_cell({ r: row, c: column });
        expect(addressOf({ row, column })).toBe(address);
        expect(placeOf(address)).toEqual({ row, column });
      }),
    );
  });

  test("refuse what is no cell", () => {
    for (const wrong of ["", "A", "1", "A0", "XFE1", "A1048577", "A1:B2"]) expect(() => placeOf(wrong)).toThrow();
    expect(() => areaOf("B2:A1")).toThrow(/backwards/);
  });

  test("references are made absolute and quoted", () => {
    expect(absoluteReference("Day plan!A5:A18")).toBe("'Day plan'!$A$5:$A$18");
    expect(absoluteReference("'It''s'!$A5")).toBe("'It''s'!$A$5");
    expect(sheetAndRange("'A!b'!C3")).toEqual({ sheet: "A!b", range: "C3" });
    expect(rangeOf(areaOf("B2:B2"))).toBe("B2");
    // Names that a formula would read as a cell: Excel quotes them (common practice, no source).
    expect(["Plan", "AB12", "R1C1", "2nd", "C"].map(quotedSheet)).toEqual(["Plan", "'AB12'", "'R1C1'", "'2nd'", "'C'"]);
  });
});

describe("number formats show", () => {
  test.each([
    [withUnit(1, "L"), 1234.56, "1,234.6 L"],
    [withUnit(0, "L/min"), 10, "10 L/min"],
    [formats.date, 46082, "2026-03-01"],
    [formats.dateTime, 46082.75, "2026-03-01 18:00"],
    [formats.percentOneDecimal, 0.935, "93.5%"],
    [formats.celsius, -5, "-5 °C"],
  ])("%s", (format, value, shown) => {
    // Formatted by SheetJS's SSF, an independent reading of Excel's format codes.
    expect(SSF.format(format, value)).toBe(shown);
  });
});

describe("the theme", () => {
  /** Relative luminance and contrast: WCAG 2.2, definitions of both. */
  const luminance = (rgb: string): number => {
    const [red, green, blue] = [0, 2, 4].map((at) => {
      const part = parseInt(rgb.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const contrast = (one: string, other: string): number => {
    const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
    return (light + 0.05) / (dark + 0.05);
  };

  test("contrast comes out as published for known pairs", () => {
    // WCAG: black on white is 21; #767676 on white is 4.54 (WebAIM's contrast checker).
    expect(contrast("000000", "FFFFFF")).toBeCloseTo(21, 9);
    expect(contrast("767676", "FFFFFF")).toBeCloseTo(4.54, 2);
  });

  test.each(Object.entries({ ...roles, ...marks }))(
    "%s is legible: contrast of 4.5 or more (WCAG 2.2, 1.4.3)",
    (_, style) => {
      const behind = style.fill?.type === "pattern" ? style.fill.bgColor!.rgb! : colours.white;
      expect(contrast(style.font?.color?.rgb ?? colours.ink, behind)).toBeGreaterThanOrEqual(4.5);
    },
  );

  test("figures stay legible on the full shade (WCAG 2.2, 1.4.6)", () => {
    expect(contrast(colours.ink, shades.full)).toBeGreaterThanOrEqual(7);
  });

  test("no two series share a dash, a marker or a pattern", () => {
    for (const part of ["dash", "marker", "pattern", "rgb"] as const) {
      expect(new Set(seriesLooks.map((look) => look[part])).size).toBe(seriesLooks.length);
    }
  });
});

describe("row heights", () => {
  test("grow by whole lines with the words and shrink with the width", () => {
    const line = heightFor("one", 40);
    expect(heightFor("one\ntwo\nthree", 40)).toBeGreaterThan(2.5 * line);
    const words = "word ".repeat(60);
    expect(heightFor(words, 20)).toBeGreaterThan(heightFor(words, 40));
    expect(heightFor("x".repeat(100), 20)).toBeGreaterThanOrEqual(5 * line - 12);
    expect(heightFor(words, Number.POSITIVE_INFINITY)).toBe(line);
  });
});

describe("the copy for rendering", () => {
  test("has every value and no formula", async () => {
    const bytes = await buildWorkbook(demo, demoValues);
    const [before, after] = [readCells(bytes), readCells(withoutFormulas(bytes))];
    expect([...after.values()].some(({ formula }) => formula !== undefined)).toBe(false);
    expect([...after].map(([at, { value }]) => [at, value])).toEqual([...before].map(([at, { value }]) => [at, value]));
    const sheets = Object.entries(unzipSync(withoutFormulas(bytes))).filter(([path]) =>
      path.includes("worksheets/sheet"),
    );
    for (const [, xml] of sheets) expect(strFromU8(xml)).not.toMatch(/<f[ >/]|cm="/);
  });
});
