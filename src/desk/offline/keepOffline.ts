/** What became of the page's files on this machine. */
export interface KeptOffline {
  /** For the first time, all of them are kept. */
  ready(): void;
  /** Those of a newer build are kept, and are used once no tab shows the older page. */
  newer(): void;
}

/**
 * Keeps the page's files for visits without a network. A browser allows it over https and on localhost only; elsewhere
 * nothing happens.
 *
 * @param worker address of the built worker, beside the page
 */
export async function keepOffline(worker: string, told: KeptOffline): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  const registration = await navigator.serviceWorker.register(worker, { updateViaCache: "none" });
  const isFirst = registration.active === null;
  if (registration.waiting) told.newer();
  const follow = (installing: ServiceWorker | null) =>
    installing?.addEventListener("statechange", () => {
      if (installing.state === "installed" && registration.active) told.newer();
      if (installing.state === "activated" && isFirst) told.ready();
    });
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration.installing));
}
