/** Every built file below the page's folder, with the digest of its bytes; put in when the page is given away. */
declare const BUILT_FILES: Readonly<Record<string, string>>;

/** Changes whenever one of the built files does. */
declare const BUILT_VERSION: string;

interface LastingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface FetchEvent extends LastingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const scope = globalThis as unknown as {
  readonly registration: ServiceWorkerRegistration;
  addEventListener(kind: "install" | "activate", listen: (event: LastingEvent) => void): void;
  addEventListener(kind: "fetch", listen: (event: FetchEvent) => void): void;
};

/** The folder that the page is served from. */
const folder = scope.registration.scope;
const OURS = `cordonbook ${folder} `;
const KEPT = OURS + BUILT_VERSION;

scope.addEventListener("install", (event) => event.waitUntil(keepAll()));
scope.addEventListener("activate", (event) => event.waitUntil(dropOlder()));
scope.addEventListener("fetch", (event) => {
  const file = builtFile(event.request);
  if (file !== undefined) event.respondWith(answer(file, event.request));
});

/** All files or none: one whose bytes are of another build refuses the whole version, and the one before stays. */
async function keepAll(): Promise<void> {
  const requests = Object.entries(BUILT_FILES).map(
    ([file, integrity]) => new Request(new URL(file, folder), { integrity, cache: "no-cache" }),
  );
  await (await caches.open(KEPT)).addAll(requests);
}

async function dropOlder(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== KEPT);
  await Promise.all(older.map((name) => caches.delete(name)));
}

function builtFile({ method, url }: Request): string | undefined {
  if (method !== "GET" || !url.startsWith(folder)) return undefined;
  const { pathname } = new URL(url);
  const file = pathname.slice(new URL(folder).pathname.length) || "index.html";
  return Object.hasOwn(BUILT_FILES, file) ? file : undefined;
}

async function answer(file: string, request: Request): Promise<Response> {
  const kept = await (await caches.open(KEPT)).match(new URL(file, folder));
  if (kept === undefined) return fetch(request);
  return kept.redirected ? new Response(kept.body, { headers: kept.headers }) : kept;
}
