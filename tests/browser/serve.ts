// The built page, served as any static host would, under a path that it does not know of.
import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

export const dist = fileURLToPath(new URL("../../dist/", import.meta.url));
const types: { readonly [extension: string]: string } = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

export interface Served {
  readonly url: string;
  /** From now on served in place of a file of the build, as after another version was put up. */
  replace(file: string, content: string): void;
  close(): Promise<void>;
}

/** Beside the page: answered after so many ms, with nothing. */
export const lateBy = (ms: number): string => `late?ms=${ms}`;

export async function serveDist(path = "/somewhere/else/"): Promise<Served> {
  if (!existsSync(join(dist, "index.html")))
    throw new Error("Build the page first: npm test does.");
  const replaced = new Map<string, string>();
  const server = createServer((request, response) => {
    const { pathname, searchParams } = new URL(request.url ?? "/", "http://here");
    const inside = pathname.startsWith(path) ? normalize(pathname.slice(path.length)) : "..";
    if (inside === "late") {
      setTimeout(() => response.writeHead(204).end(), Number(searchParams.get("ms")));
      return;
    }
    const name = inside === "." || inside === "" ? "index.html" : inside;
    const file = join(dist, name);
    if (inside.startsWith("..") || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const type = types[extname(file)] ?? "application/octet-stream";
    response.writeHead(200, { "content-type": type });
    const instead = replaced.get(name);
    if (instead !== undefined) {
      response.end(instead);
      return;
    }
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${path}`,
    replace: (file, content) => replaced.set(file, content),
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
