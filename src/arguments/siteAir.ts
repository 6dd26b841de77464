import { airTemperatureRange, altitudeRange } from "../models/atmosphere";
import { celsius, metresHigh } from "./quantity";

/** Geopotential altitude of a site [m], inside the troposphere of the standard atmosphere. */
export const siteAltitude = metresHigh.between(altitudeRange.least, altitudeRange.most);

/** Temperature of the air at a site [°C]. */
export const airCelsius = celsius.between(airTemperatureRange.least, airTemperatureRange.most);
