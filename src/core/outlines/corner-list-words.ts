/** What can be wrong with a typed list of corners, in words. */
export const cornerListWords = {
  line: (line: number, text: string, reason: string) => `Line ${line}, "${text}": ${reason}`,
  expected:
    "expected x and y, such as 12.5, 3; or a side by length and direction, such as 12 m at 90; or a curve, such as 6, 0 through 3, 2",
  twoWays: "can be read two ways; put a semicolon between x and y",
  direction: 'expected degrees clockwise, such as 90, after "at"',
  noLength: "a side is longer than nothing",
  curveFirst: "a curve needs a corner before it to begin at",
  twice: "the same corner as the line before",
  tooMany: (most: number) => `more than ${most} corners`,
} as const;
