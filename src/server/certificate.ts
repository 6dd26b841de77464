/** The certificate `npm start` shows for https://localhost. */
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { X509Certificate } from "node:crypto";
import * as devCertificates from "office-addin-dev-certs";
import type { Certificate } from "./staticServer";

export interface FoundCertificate extends Certificate {
  /** Does this computer trust it? If not, browsers warn and Excel shows nothing until told to trust it. */
  trusted: boolean;
  /** The authority's file, to be trusted by hand. */
  authority: string;
  expires: Date;
}

interface Files {
  authority: string;
  cert: string;
  key: string;
}

const filesIn = (folder: string): Files => ({
  authority: path.join(folder, "ca.crt"),
  cert: path.join(folder, "localhost.crt"),
  key: path.join(folder, "localhost.key"),
});

const read = (files: Files, trusted: boolean): FoundCertificate => {
  const cert = readFileSync(files.cert);
  return {
    cert,
    key: readFileSync(files.key),
    trusted,
    authority: files.authority,
    expires: new Date(new X509Certificate(cert).validTo),
  };
};

const stillGood = (files: Files): boolean => {
  if (![files.authority, files.cert, files.key].every((file) => existsSync(file))) return false;
  return new Date(new X509Certificate(readFileSync(files.cert)).validTo).getTime() > Date.now();
};

/** The check looks into the system's own store; where it can't, nothing is known to be trusted. */
const isTrusted = (): boolean => {
  try {
    return devCertificates.verifyCertificates();
  } catch {
    return false;
  }
};

const quietly = async <Result>(work: () => Promise<Result>): Promise<Result> => {
  const { log } = console;
  console.log = () => undefined;
  try {
    return await work();
  } finally {
    console.log = log;
  }
};

/**
 * A certificate for localhost: the developer certificate this computer already trusts; else, when `mayAskForTrust`, a
 * new one the system is asked to trust (Windows and macOS show their own question, Linux needs sudo and reports success
 * even when it failed, so the store is looked at again afterwards); else one made in `folder` that nobody trusts yet.
 */
export const findCertificate = async (folder: string, mayAskForTrust: boolean): Promise<FoundCertificate> => {
  const shared = filesIn(path.join(os.homedir(), ".office-addin-dev-certs"));
  if (isTrusted()) return read(shared, true);
  if (mayAskForTrust) {
    try {
      await quietly(() => devCertificates.ensureCertificatesAreInstalled());
      if (isTrusted()) return read(shared, true);
    } catch {
      // Declined, or no right to change the store: go on with a certificate of our own.
    }
  }
  const own = filesIn(folder);
  if (!stillGood(own)) {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    for (const file of Object.values(own)) rmSync(file, { force: true });
    await quietly(() => devCertificates.generateCertificates(own.authority, own.cert, own.key, 30));
    chmodSync(own.key, 0o600);
  }
  return read(own, false);
};
