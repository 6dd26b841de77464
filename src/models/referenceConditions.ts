/** The conditions that quantities are referred to, one place each. */

/** 0 °C [K] (International System of Units, definition of the degree Celsius). */
export const zeroCelsius = 273.15;

/** Standard atmosphere [bar] (ISO 2533:1975): gauge = absolute − this, at every altitude. */
export const standardAtmosphere = 1.01325;

/** Standard atmosphere [kPa]. */
export const standardAtmosphereKpa = standardAtmosphere * 100;

/** Temperature to which gas litres are referred [°C], 70 °F; their pressure is the standard atmosphere. */
export const gasReferenceCelsius = 21.1;
