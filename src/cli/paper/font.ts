/** The plot map's type, carried inside the built program. */
import boldUrl from "@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf?inline";
import regularUrl from "@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?inline";

export const mapFonts = {
  get regular(): Uint8Array {
    return bytesOf(regularUrl);
  },
  get bold(): Uint8Array {
    return bytesOf(boldUrl);
  },
};

/** Bytes of a `data:...;base64,` address. */
function bytesOf(dataUrl: string): Uint8Array {
  return new Uint8Array(Buffer.from(dataUrl.slice(dataUrl.indexOf(",") + 1), "base64"));
}
