/** The built site once more, from a server that can be told to answer otherwise, as servers do. */
import { type Server, type ServerResponse, createServer } from "node:http";
import { siteUrl } from "./browser.ts";

export interface SecondServer {
  /** Ends in a slash. */
  readonly url: string;
  /** Answers to a path with another text from now on; the text is made from the right one. */
  readonly change: (path: string, make: (text: string) => string) => void;
  readonly close: () => Promise<void>;
}

export async function startSecondServer(): Promise<SecondServer> {
  const changes = new Map<string, (text: string) => string>();
  const answerTo = async (address: string, response: ServerResponse) => {
    const path = address.replace(/\?.*$/, "").slice(1);
    const answer = await fetch(new URL(path, siteUrl()));
    const bytes = Buffer.from(await answer.arrayBuffer());
    const change = changes.get(path);
    response.writeHead(answer.status, {
      "content-type": answer.headers.get("content-type") ?? "application/octet-stream",
      "cache-control": "no-cache",
    });
    response.end(change ? change(bytes.toString("utf8")) : bytes);
  };
  const server = createServer((request, response) => {
    answerTo(request.url ?? "/", response).catch(() => response.destroy());
  });
  await new Promise<void>((resolve) => {
    server.listen(0, "127.0.0.1", resolve);
  });
  return {
    url: `http://127.0.0.1:${portOf(server)}/`,
    change: (path, make) => changes.set(path, make),
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => {
        server.close(resolve);
      });
    },
  };
}

function portOf(server: Server): number {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("Not listening.");
  return address.port;
}
