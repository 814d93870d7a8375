/** `npm start`: installs what is missing and serves the app, on PORT or the first free port from 5173. */
import { installPackages } from "./installed-packages.mjs";
import { repository } from "./repository.mjs";

if (!installPackages()) process.exit(1);
const { createServer } = await import("vite");

const port = Number(process.env.PORT);
try {
  const server = await createServer({
    configFile: `${repository}vite.config.ts`,
    logLevel: "warn",
    // The IPv4 address: "localhost" alone may mean ::1 only, which not every program tries.
    server: { host: "127.0.0.1", port: port || 5173, strictPort: port > 0 },
  });
  await server.listen();
  console.log(`Wideberth is at http://localhost:${server.httpServer.address().port}/`);
} catch (error) {
  console.error(`Wideberth could not start: ${error.message}`);
  process.exit(1);
}
