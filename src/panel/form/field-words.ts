/** Words of the fields of dialogs and of what is selected. */

export const differs = "differs";
export const notKnown = "not known";
export const noteTooLong = (most: number) => `A note has at most ${most} letters`;
export const sizeNeeded = "A size must be more than nothing";
export const typeNumber = "Type a number";
export const typeWholeNumber = "Type a whole number, for example 24";
export const overMillion = "That is more than a million";
export const typeDegrees = "Type degrees clockwise, for example 12 or -12.5";
export const turnTooLarge = "A turn is at most 360 degrees";
export const typeScale = "Type a scale, for example 1:50";
export const scaleOutOfRange = "Type a scale from 1:1 to 1:10000";
export const typeDays = "Type days, for example 60 or 55-65";
export const smallerFirst = "The smaller number comes first";
export const typeDate = "Type a date like 2027-05-20 or 20 May";
export const noSuchDay = (day: string) => `There is no ${day}`;
export const lastBeforeFirst = "The last day is before the first";
export const typeOtherDay = "Type the other day as well";
export const firstDay = "First day";
export const lastDay = "Last day";
export const width = "Width";
export const length = "Length";
export const turnClockwise = "Turn, clockwise";
export const middleRight = "Middle, right (x)";
export const middleUp = "Middle, up (y)";
export const dayExample = "20 May";
