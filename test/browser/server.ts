import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".webmanifest": "application/manifest+json",
};

/** The built app at an address of its own that can be switched off and on again, as a network is. `folder` may be another build. */
export class AppServer {
  #server: Server | null = null;
  #port = 0;
  folder = "dist/app";

  get url(): string {
    return `http://127.0.0.1:${this.#port}/`;
  }

  async start(): Promise<string> {
    const server = createServer((request, response) => {
      const path = normalize(decodeURIComponent(new URL(request.url ?? "/", this.url).pathname)).replace(/\/$/, "/index.html");
      const file = join(this.folder, path);
      if (path.includes("..") || !existsSync(file) || !statSync(file).isFile()) {
        response.writeHead(404).end();
        return;
      }
      // As servers do that pack what they send; a worker that minds it finds nothing of what it kept.
      response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream", vary: "Accept-Encoding, Origin" });
      createReadStream(file).pipe(response);
    });
    this.#server = server;
    await new Promise<void>((ready) => server.listen(this.#port, "127.0.0.1", ready));
    this.#port = (server.address() as AddressInfo).port;
    return this.url;
  }

  async stop(): Promise<void> {
    const server = this.#server;
    this.#server = null;
    server?.closeAllConnections();
    await new Promise((closed) => (server ? server.close(closed) : closed(undefined)));
  }
}
