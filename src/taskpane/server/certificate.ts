import { X509Certificate } from "node:crypto";
import { existsSync } from "node:fs";
import { chmod, readFile } from "node:fs/promises";
import path from "node:path";
import type { Certificate } from "./serveAddin";

/** Nobody but the owner of the key may read it. */
const OWNER_ONLY = 0o600;
const DAYS = 30;
const DAY_MS = 86_400_000;

/** The part of the optional package office-addin-dev-certs that is used. */
export interface CertificateMaker {
  generateCertificates(ca: string, cert: string, key: string, days: number, domains: string[]): Promise<void>;
  getHttpsServerOptions(): Promise<{ cert: Buffer; key: Buffer }>;
  uninstallCaCertificate(): Promise<void>;
}

/** A certificate for localhost that lies in `folder` and that nothing on this machine was told to trust. */
export async function untrustedCertificate(maker: CertificateMaker, folder: string): Promise<Certificate> {
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) => path.join(folder, name));
  if (!existsSync(cert) || endsSoon(await readFile(cert)))
    await maker.generateCertificates(ca, cert, key, DAYS, ["localhost", "127.0.0.1"]);
  await chmod(key, OWNER_ONLY);
  return { cert: await readFile(cert), key: await readFile(key) };
}

function endsSoon(certificate: Buffer): boolean {
  return Date.parse(new X509Certificate(certificate).validTo) < Date.now() + DAY_MS;
}
