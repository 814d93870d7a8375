/** Keys that are no commands: they belong to what has the focus, and it handles them itself. */

export interface KeySection {
  readonly heading: string;
  readonly keys: readonly { readonly key: string; readonly does: string }[];
}

export const gestureKeys: readonly KeySection[] = [
  {
    heading: "On the sheet",
    keys: [
      { key: "Arrows", does: "Move what is selected; with nothing selected, move the view" },
      { key: "Shift + arrows", does: "Move it further" },
      { key: "Space held", does: "Drag the view with any tool" },
      { key: "Enter", does: "Close the outline being drawn" },
      { key: "Backspace", does: "Delete its last corner" },
      { key: "A number", does: "Type the size of what is being drawn; Tab to the second value" },
      {
        key: "Shift held",
        does: "Keep straight, square, or in turns of 15°; add to the selection",
      },
      { key: "Alt held", does: "Let nothing snap" },
      { key: "Escape", does: "Cancel, then leave the tool, then select nothing" },
    ],
  },
  {
    heading: "On a bar of the bloom strip",
    keys: [
      { key: "Arrows", does: "Sow or set out a day earlier or later" },
      { key: "Shift + arrows", does: "A week earlier or later" },
      { key: "Escape", does: "Cancel: it goes back" },
    ],
  },
  {
    heading: "In a field",
    keys: [
      { key: "Enter", does: "Apply what is typed" },
      { key: "Escape", does: "Cancel: the old value comes back" },
    ],
  },
];
