/** Text for finding: without case and without marks on letters, `Béla` as `bela`. */
export function foldedText(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().trim();
}
