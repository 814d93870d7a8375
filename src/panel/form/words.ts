/** Words of the kit that are there with the first load. */

export const close = "Close";
export const nameTooLong = (most: number) => `A name has at most ${most} letters`;
