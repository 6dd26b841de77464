/** A number with its unit behind it: `withUnit(1, "L")` shows 1,234.5 L. The cell still holds the bare number. */
export const withUnit = (decimals: number, unit: string): string =>
  `#,##0${decimals > 0 ? `.${"0".repeat(decimals)}` : ""}" ${unit.replace(/"/g, "")}"`;

/** Number formats that several sheets share. Dates are ISO, so that no reader takes the day for the month. */
export const formats = {
  whole: "#,##0",
  oneDecimal: "#,##0.0",
  twoDecimals: "#,##0.00",
  percent: "0%",
  percentOneDecimal: "0.0%",
  date: "yyyy-mm-dd",
  dateTime: "yyyy-mm-dd hh:mm",
  text: "@",
  litres: withUnit(0, "L"),
  litresOneDecimal: withUnit(1, "L"),
  litresPerHour: withUnit(2, "L/h"),
  litresPerMinute: withUnit(1, "L/min"),
  litresPerDay: withUnit(0, "L/day"),
  cubicMetres: withUnit(1, "m³"),
  hours: withUnit(1, "h"),
  minutes: withUnit(0, "min"),
  days: withUnit(1, "days"),
  kilograms: withUnit(0, "kg"),
  kilowatts: withUnit(1, "kW"),
  kilowattHours: withUnit(0, "kWh"),
  bar: withUnit(1, "bar"),
  celsius: withUnit(0, "°C"),
  metres: withUnit(0, "m"),
} as const;
