/** Where `wideberth serve` says it can be reached, and what it says plain http cannot do. */
import jsqr from "jsqr";
import { describe, expect, test } from "vitest";
import { homeAddresses, servingWords, squareCode } from "../../src/cli/serve.ts";

const info = (address: string, more: object = {}) => ({
  address,
  netmask: "255.255.255.0",
  family: "IPv4" as const,
  mac: "00:00:00:00:00:00",
  internal: false,
  cidr: null,
  ...more,
});

test("addresses are those other devices reach: not the loop, not what a device gave itself", () => {
  const interfaces = {
    lo: [info("127.0.0.1", { internal: true })],
    wlan0: [info("192.168.1.20"), info("fe80::1", { family: "IPv6", scopeid: 2 })],
    eth0: [info("169.254.7.9"), info("10.0.0.4")],
    down: undefined,
  };
  expect(homeAddresses(interfaces, 8080)).toEqual([
    "http://192.168.1.20:8080/",
    "http://10.0.0.4:8080/",
  ]);
});

describe("the words", () => {
  const home = ["http://192.168.1.20:8080/"];

  test("name what a phone cannot do over plain http, and where its plans are", () => {
    const words = servingWords(8080, home, { isOnlyHere: false, hasScreen: false });
    expect(words).toContain("http://localhost:8080/");
    expect(words).toContain(home[0]);
    for (const part of ["camera", "position", "without a network", "docs/hosting.md", "to files"]) {
      expect(words).toContain(part);
    }
  });

  test("warn of nothing where nobody else can come", () => {
    for (const [network, isOnlyHere] of [
      [home, true],
      [[], false],
    ] as const) {
      const words = servingWords(8080, network, { isOnlyHere, hasScreen: true });
      expect(words).not.toContain("camera");
      expect(words).not.toContain("192.168");
    }
  });
});

test("the square code on the screen is read back as the address (jsqr)", () => {
  const address = "http://192.168.1.20:8080/";
  const lines = squareCode(address).split("\n");
  const width = Math.max(...lines.map((line) => line.length));
  // A sign is one module wide and two high; what is drawn shines, as on a dark screen.
  const lit = (line: string, at: number): readonly [boolean, boolean] => {
    const sign = line[at] ?? " ";
    return [sign === "█" || sign === "▀", sign === "█" || sign === "▄"];
  };
  const rows = lines.flatMap((line) => {
    const cells = Array.from({ length: width }, (_, at) => lit(line, at));
    return [cells.map(([upper]) => upper), cells.map(([, lower]) => lower)];
  });
  const scale = 4;
  const dots = new Uint8ClampedArray(width * scale * rows.length * scale * 4).fill(255);
  for (let y = 0; y < rows.length * scale; y += 1) {
    for (let x = 0; x < width * scale; x += 1) {
      const isLit = rows[Math.floor(y / scale)]?.[Math.floor(x / scale)] ?? false;
      dots.fill(isLit ? 255 : 0, (y * width * scale + x) * 4, (y * width * scale + x) * 4 + 3);
    }
  }
  expect(jsqr(dots, width * scale, rows.length * scale)?.data).toBe(address);
});
