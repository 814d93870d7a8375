/** To stdout no faster than it is read, so that what is not yet read does not fill the memory. */
export async function writeSteadily(text: string | Uint8Array): Promise<void> {
  const { stdout } = process;
  // Whoever reads may have stopped early, as `head` does.
  if (text.length === 0 || stdout.destroyed || stdout.write(text)) return;
  await new Promise<void>((resolve) => {
    const done = () => {
      stdout.off("drain", done).off("close", done).off("error", done);
      resolve();
    };
    stdout.on("drain", done).on("close", done).on("error", done);
  });
}

/** Characters written at a time. */
const PIECE = 60_000;

/** Short texts joined to longer ones, so that each is worth a write. */
export function* gathered(texts: Iterable<string>): Generator<string> {
  let held: string[] = [];
  let length = 0;
  for (const text of texts) {
    held.push(text);
    length += text.length;
    if (length < PIECE) continue;
    yield held.join("");
    held = [];
    length = 0;
  }
  yield held.join("");
}
