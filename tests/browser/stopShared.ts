/** Jest runs this once after all browser tests. */
export default async function stopShared(): Promise<void> {
  await globalThis.stopShared?.();
}
