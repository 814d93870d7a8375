/** What a thing in the hand snaps to. */

export const equalGaps = "equal gaps";
export const cornerOf = (name: string) => `corner of ${name}`;
export const edgeOf = (name: string) => `edge of ${name}`;
export const middleOf = (name: string) => `middle of ${name}`;
