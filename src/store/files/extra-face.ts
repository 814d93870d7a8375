/** The grower's own face for names that the program's has no letters for; kept on the device. */
import { type DBSchema, type IDBPDatabase, openDB } from "idb";

export interface KeptFace {
  /** Of the file it came from. */
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

interface FaceDb extends DBSchema {
  faces: { key: "own"; value: KeptFace };
}

function open(): Promise<IDBPDatabase<FaceDb>> {
  return openDB<FaceDb>("wideberth-face", 1, {
    upgrade: (db) => void db.createObjectStore("faces"),
  });
}

/** Null where none is kept, or storage is out of reach: then the program's own face does it. */
export async function keptFace(): Promise<KeptFace | null> {
  try {
    const db = await open();
    const face = await db.get("faces", "own");
    db.close();
    return face ?? null;
  } catch {
    return null;
  }
}

/** Keeps it in the place of the one before; null takes it away. Throws where storage is full. */
export async function keepFace(face: KeptFace | null): Promise<void> {
  const db = await open();
  try {
    if (face) await db.put("faces", face, "own");
    else await db.delete("faces", "own");
  } finally {
    db.close();
  }
}
