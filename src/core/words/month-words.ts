/** Names of the months in full, January first. */
export const fullMonths: readonly string[] = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** `Week 14: 5 to 11 April`. */
export const week = (number: number, start: string, end: string) =>
  `Week ${number}: ${start} to ${end}`;

/** Short names of the months, January first. */
export const months: readonly string[] = [
  "Jan",
  "Feb",
  "Mar",
  "Apr",
  "May",
  "Jun",
  "Jul",
  "Aug",
  "Sep",
  "Oct",
  "Nov",
  "Dec",
];
