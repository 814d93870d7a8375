/** Words of storage on the screen. */
import { formOf } from "../../core/words/plurals.ts";

export const name = "Name";
export const tinInThePantry = "tin in the pantry";
export const sayHowWarmDamp = "Say how warm and damp it is";
export const anotherPartYear = "Another part of the year";
export const note = "Note";
export const addThePlace = "Add the place";
export const apply = "Apply";
export const backToThePlaces = "Back to the places";
export const allYear = "All year";
export const from = (monthName: string | number) => `From ${monthName}`;
export const fromTheFirstOf = "From the first of";
export const temperatureC = "Temperature, C";
export const seedLies = "Seed lies";
export const moistureOfTheSeed = "Moisture of the seed, %";
export const measuredFreshWeight = "Measured, of the fresh weight";
export const humidityOfTheAir = "Humidity of the air, %";
export const deletePartYear = "Delete this part of the year";
export const storagePlaces = "Storage places";
export const noneYetHowWarm = "None yet. How warm and damp seed lies decides how long it lives.";
export const addAPlace = "Add a place";
export const dryCoolKeepsLongest =
  "Dry and cool keeps longest. The hundred rule of seed handbooks: degrees Fahrenheit and percent of humidity add up to 100 or less.";
export const lotCount = (count: number) =>
  formOf(count, { one: `${count} lot`, other: `${count} lots` });
export const worstHundredRule = (round: string | number) =>
  ` At worst ${round} by the hundred rule`;
export const change = (nameText: string | number) => `Change ${nameText}`;
export const change2 = "Change";
export const deleteWord = (nameText: string | number) => `Delete ${nameText}`;
export const deleteWord2 = "Delete";
export const openToAir = "open to the air";
export const sealedDry = "sealed dry";
export const typePlaceName = "Type the name of the place";
export const typeCelsius = "Temperature: type degrees Celsius";
export const typeHumidity =
  "Type the humidity of the air, or the moisture the seed is sealed in at";
export const fieldExpected = (field: string, expected: string) => `${field}: expected ${expected}`;
export const somethingElse = "something else";
export const sameMonthTwice = "Two parts of the year begin in the same month";
export const temperatureField = "Temperature";
export const humidityField = "Humidity";
export const moistureField = "Moisture";
export const nameField = "Name";
export const roomAssumed = "Temperature and humidity not known: an ordinary room is assumed.";
export const sealedAt = (celsius: number, moisture: number) =>
  `${celsius} C, sealed at ${moisture} % moisture`;
export const openAt = (celsius: number, humidity: number) => `${celsius} C, ${humidity} % humidity`;
export const fromMonth = (month: string, climate: string) => `from ${month}: ${climate}`;
