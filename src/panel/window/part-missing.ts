/** What browsers say when a part of the program that is loaded on demand does not arrive. */
const MISSING = [
  /dynamically imported module/i,
  /importing a module script failed/i,
  /unable to preload/i,
  /module script/i,
];

/** Whether a fault is a part of the program that could not be fetched. */
export function isPartMissing(message: string): boolean {
  return MISSING.some((pattern) => pattern.test(message));
}
