import { isCellDate } from "../../cells/cellValues";
import { absoluteReference, areaOf, placesIn, sheetAndRange, type Place } from "../../cells/addresses";
import type { ChartDescription, ChartSeries } from "./description";
import { colours, fontName, seriesLooks } from "./theme";
import type { CachedCell } from "./calculation";

/** The value a cell shows, for the copies that a chart keeps. */
export type ShownValue = (sheet: string, place: Place) => CachedCell;

const escape = (words: string): string =>
  words.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const fill = (rgb: string): string => `<a:solidFill><a:srgbClr val="${rgb}"/></a:solidFill>`;

const letters = (points: number, bold: boolean): string =>
  `<a:defRPr sz="${points * 100}" b="${bold ? 1 : 0}">${fill(colours.ink)}<a:latin typeface="${fontName}"/></a:defRPr>`;

const titlePart = (words: string, points: number, turned = false): string =>
  `<c:title><c:tx><c:rich><a:bodyPr${turned ? ' rot="-5400000" vert="horz"' : ""}/><a:p><a:pPr>${letters(points, true)}</a:pPr>` +
  `<a:r><a:rPr lang="en-GB" sz="${points * 100}" b="1">${fill(colours.ink)}<a:latin typeface="${fontName}"/></a:rPr>` +
  `<a:t>${escape(words)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;

const axisLetters = `<c:txPr><a:bodyPr/><a:p><a:pPr>${letters(10, false)}</a:pPr><a:endParaRPr lang="en-GB"/></a:p></c:txPr>`;

const valuesOf = (reference: string, shown: ShownValue): CachedCell[] => {
  const { sheet, range } = sheetAndRange(reference);
  return [...placesIn(areaOf(range))].map((place) => shown(sheet, place));
};

const asNumber = (value: CachedCell): number | undefined =>
  typeof value === "number" ? value : isCellDate(value) ? value.basicValue : undefined;

const numberReference = (reference: string, shown: ShownValue, format: string): string => {
  const values = valuesOf(reference, shown);
  const points = values.map((value, index) => {
    const number = asNumber(value);
    return number === undefined ? "" : `<c:pt idx="${index}"><c:v>${number}</c:v></c:pt>`;
  });
  return (
    `<c:numRef><c:f>${escape(absoluteReference(reference))}</c:f><c:numCache><c:formatCode>${escape(format)}</c:formatCode>` +
    `<c:ptCount val="${values.length}"/>${points.join("")}</c:numCache></c:numRef>`
  );
};

const textReference = (reference: string, shown: ShownValue): string => {
  const values = valuesOf(reference, shown);
  const points = values.map((value, index) =>
    value === null || value === "" ? "" : `<c:pt idx="${index}"><c:v>${escape(String(value))}</c:v></c:pt>`,
  );
  return (
    `<c:strRef><c:f>${escape(absoluteReference(reference))}</c:f><c:strCache><c:ptCount val="${values.length}"/>` +
    `${points.join("")}</c:strCache></c:strRef>`
  );
};

const lineLook = (series: ChartSeries, index: number): string => {
  if (series.reserve) {
    return (
      `<c:spPr><a:ln w="22225" cap="flat">${fill("000000")}<a:prstDash val="sysDash"/><a:round/></a:ln></c:spPr>` +
      `<c:marker><c:symbol val="none"/></c:marker>`
    );
  }
  const { rgb, dash, marker } = seriesLooks[index % seriesLooks.length]!;
  const edge = `<a:ln w="9525">${fill(rgb)}</a:ln>`;
  return (
    `<c:spPr><a:ln w="25400" cap="rnd">${fill(rgb)}<a:prstDash val="${dash}"/><a:round/></a:ln></c:spPr>` +
    `<c:marker><c:symbol val="${marker}"/><c:size val="6"/><c:spPr>${marker === "x" ? "<a:noFill/>" : fill(rgb)}${edge}</c:spPr></c:marker>`
  );
};

const columnLook = (index: number): string => {
  const { rgb, pattern } = seriesLooks[index % seriesLooks.length]!;
  const inside = pattern
    ? `<a:pattFill prst="${pattern}"><a:fgClr><a:srgbClr val="${rgb}"/></a:fgClr><a:bgClr><a:srgbClr val="FFFFFF"/></a:bgClr></a:pattFill>`
    : fill(rgb);
  return `<c:spPr>${inside}<a:ln w="9525">${fill(rgb)}</a:ln></c:spPr><c:invertIfNegative val="0"/>`;
};

const categoryAxis = "111111111";
const valueAxis = "222222222";

/** The whole of xl/charts/chartN.xml: lines and columns over shared axes, with copies of the values. */
export const chartPart = (chart: ChartDescription, shown: ShownValue): string => {
  const categoryFormat = chart.x.format ?? (chart.dates ? "d mmm" : "General");
  const valueFormat = chart.y.format ?? "#,##0";
  const kindOf = (series: ChartSeries): "line" | "column" => (series.reserve ? "line" : (series.as ?? chart.kind));

  const seriesPart = (series: ChartSeries, index: number): string => {
    const name = series.name.startsWith("=")
      ? `<c:tx>${textReference(series.name.slice(1), shown)}</c:tx>`
      : `<c:tx><c:v>${escape(series.name)}</c:v></c:tx>`;
    const categories = chart.dates
      ? numberReference(chart.categories, shown, categoryFormat)
      : textReference(chart.categories, shown);
    const isLine = kindOf(series) === "line";
    return (
      `<c:ser><c:idx val="${index}"/><c:order val="${index}"/>${name}${isLine ? lineLook(series, index) : columnLook(index)}` +
      `<c:cat>${categories}</c:cat><c:val>${numberReference(series.values, shown, valueFormat)}</c:val>` +
      `${isLine ? '<c:smooth val="0"/>' : ""}</c:ser>`
    );
  };

  const parts = chart.series.map((series, index) => ({ kind: kindOf(series), xml: seriesPart(series, index) }));
  const ofKind = (kind: "line" | "column"): string =>
    parts
      .filter((part) => part.kind === kind)
      .map((part) => part.xml)
      .join("");
  const axes = `<c:axId val="${categoryAxis}"/><c:axId val="${valueAxis}"/>`;
  const columns = ofKind("column");
  const lines = ofKind("line");
  const columnChart =
    columns &&
    `<c:barChart><c:barDir val="col"/><c:grouping val="${chart.stacked ? "stacked" : "clustered"}"/><c:varyColors val="0"/>` +
      `${columns}<c:gapWidth val="60"/>${chart.stacked ? '<c:overlap val="100"/>' : ""}${axes}</c:barChart>`;
  const lineChart =
    lines &&
    `<c:lineChart><c:grouping val="standard"/><c:varyColors val="0"/>${lines}<c:marker val="1"/>${axes}</c:lineChart>`;

  const limit = (tag: "max" | "min", value?: number): string =>
    value === undefined ? "" : `<c:${tag} val="${value}"/>`;
  const outline = `<c:spPr><a:ln w="9525">${fill(colours.rule)}</a:ln></c:spPr>`;
  const axisTag = chart.dates ? "dateAx" : "catAx";
  const axisEnd = chart.dates
    ? '<c:auto val="1"/><c:lblOffset val="100"/><c:baseTimeUnit val="days"/>'
    : '<c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/>';
  const acrossAxis =
    `<c:${axisTag}><c:axId val="${categoryAxis}"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/>` +
    `<c:axPos val="b"/>${titlePart(chart.x.title, 10)}<c:numFmt formatCode="${escape(categoryFormat)}" sourceLinked="0"/>` +
    `<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>${outline}${axisLetters}` +
    `<c:crossAx val="${valueAxis}"/><c:crosses val="autoZero"/>${axisEnd}</c:${axisTag}>`;
  const upAxis =
    `<c:valAx><c:axId val="${valueAxis}"/><c:scaling><c:orientation val="minMax"/>${limit("max", chart.y.most)}` +
    `${limit("min", chart.y.least)}</c:scaling><c:delete val="0"/><c:axPos val="l"/>` +
    `<c:majorGridlines><c:spPr><a:ln w="6350">${fill(colours.hairline)}</a:ln></c:spPr></c:majorGridlines>` +
    `${titlePart(chart.y.title, 10, true)}<c:numFmt formatCode="${escape(valueFormat)}" sourceLinked="0"/>` +
    `<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>${outline}${axisLetters}` +
    `<c:crossAx val="${categoryAxis}"/><c:crosses val="autoZero"/><c:crossBetween val="between"/></c:valAx>`;
  const legend =
    chart.series.length > 1 ? `<c:legend><c:legendPos val="b"/><c:overlay val="0"/>${axisLetters}</c:legend>` : "";

  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n` +
    `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" ` +
    `xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" ` +
    `xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">` +
    `<c:date1904 val="0"/><c:lang val="en-GB"/><c:roundedCorners val="0"/><c:chart>${titlePart(chart.title, 13)}` +
    `<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${columnChart}${lineChart}${acrossAxis}${upAxis}</c:plotArea>` +
    `${legend}<c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart>` +
    `<c:spPr>${fill(colours.white)}<a:ln w="9525">${fill(colours.hairline)}</a:ln></c:spPr></c:chartSpace>`
  );
};
