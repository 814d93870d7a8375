/** Commands of clipboard: their names, further words they are found by, and why they cannot be used. */

export const cut = "Cut";
export const copy = "Copy";
export const paste = "Paste";
export const pasteText = "Paste from a text ...";
