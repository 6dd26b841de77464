/** Conversion factors, exact by NIST SP 811 (2008), appendix B.8, or derived from exact ones. */

/** m */
export const foot = 0.3048;
/** m */
export const inch = 0.0254;
/** kg */
export const pound = 0.45359237;
/** US liquid gallon, L */
export const gallon = 3.785411784;
/** L */
export const cubicFoot = 28.316846592;
/** Standard acceleration of gravity, m/s² */
export const standardGravity = 9.80665;
/** One pound-force per square inch in bar. */
export const barPerPsi = (pound * standardGravity) / (inch * inch) / 1e5;
/** Mechanical horsepower, 550 ft·lbf/s, in kW. */
export const horsepower = (550 * foot * pound * standardGravity) / 1000;
/** Conventional inch of mercury, kPa */
export const inchOfMercury = 3.386389;
/** Conventional inch of water, kPa */
export const inchOfWater = 0.2490889;
/** Conventional millimetre of water, kPa */
export const millimetreOfWater = standardGravity / 1000;
/** Conventional millimetre of mercury, kPa */
export const millimetreOfMercury = 0.1333224;
