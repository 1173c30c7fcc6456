/** A package that may be missing on this machine, or undefined when it is. */
export async function optionalPackage<T>(name: string): Promise<T | undefined> {
  try {
    return (await import(name)) as T;
  } catch (problem) {
    const { code, message } = problem as NodeJS.ErrnoException;
    if (code?.endsWith("MODULE_NOT_FOUND") && message.includes(name)) return undefined;
    throw problem;
  }
}
