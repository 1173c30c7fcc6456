import type { Text } from "./language";

/** What the scripts say that try the add-in on one machine. */
export const ADDIN_SERVER = {
  notHere: {
    en: "Excel runs on Windows and Mac only, so there is nothing to start on this machine ({platform}). Without Excel use npm start; for Excel on the web put dist/ on an HTTPS host (DEVELOPERS.md).",
    es: "Excel solo funciona en Windows y Mac, así que en este equipo ({platform}) no hay nada que iniciar. Sin Excel use npm start; para Excel en la web ponga dist/ en un servidor HTTPS (DEVELOPERS.md).",
    fr: "Excel ne tourne que sur Windows et Mac : rien à démarrer sur cette machine ({platform}). Sans Excel, utilisez npm start ; pour Excel sur le web, placez dist/ sur un hôte HTTPS (DEVELOPERS.md).",
  },
  notInstalled: {
    en: "The optional package {package} is not installed on this machine. Run npm install {package}@{version} --no-save, then try again.",
    es: "El paquete opcional {package} no está instalado en este equipo. Ejecute npm install {package}@{version} --no-save y repita.",
    fr: "Le paquet facultatif {package} n'est pas installé sur cette machine. Lancez npm install {package}@{version} --no-save, puis recommencez.",
  },
  notBuilt: {
    en: "There is no {file}. Run npm run build first.",
    es: "No existe {file}. Ejecute antes npm run build.",
    fr: "Le fichier {file} n'existe pas. Lancez d'abord npm run build.",
  },
  serving: {
    en: "The add-in is served at {address} (stop it with Ctrl+C). Its certificate was made on this machine and no other trusts it.",
    es: "El complemento se sirve en {address} (se detiene con Ctrl+C). Su certificado se hizo en este equipo y ningún otro confía en él.",
    fr: "Le complément est servi à l'adresse {address} (Ctrl+C pour l'arrêter). Son certificat a été créé sur cette machine et aucune autre ne lui fait confiance.",
  },
  portTaken: {
    en: "Port {port} is in use by another program. The manifest names this port, so stop that program, or build for another address: npm run build -- --env address=https://localhost:PORT/ and then npm run serve -- --port PORT.",
    es: "El puerto {port} lo usa otro programa. El manifiesto nombra ese puerto: detenga el programa o construya para otra dirección: npm run build -- --env address=https://localhost:PUERTO/ y luego npm run serve -- --port PUERTO.",
    fr: "Le port {port} est pris par un autre programme. Le manifeste nomme ce port : arrêtez ce programme, ou construisez pour une autre adresse : npm run build -- --env address=https://localhost:PORT/ puis npm run serve -- --port PORT.",
  },
  badPort: {
    en: "--port must be a whole number from 1 to 65535, but is {given}.",
    es: "--port debe ser un número entero de 1 a 65535, pero es {given}.",
    fr: "--port doit être un nombre entier de 1 à 65535, mais vaut {given}.",
  },
  trust: {
    en: "Excel asks for a certificate that this machine trusts; one is made and added to your own account's trusted certificates now. npm run excel:stop takes it away again.",
    es: "Excel exige un certificado en el que confíe este equipo; ahora se crea uno y se añade a los certificados de confianza de su cuenta. npm run excel:stop lo quita.",
    fr: "Excel exige un certificat auquel cette machine fait confiance ; il en est créé un, ajouté aux certificats de confiance de votre compte. npm run excel:stop le retire.",
  },
  stopped: {
    en: "The add-in was taken out of Excel on this machine, and its certificate with it.",
    es: "El complemento se quitó de Excel en este equipo, junto con su certificado.",
    fr: "Le complément a été retiré d'Excel sur cette machine, ainsi que son certificat.",
  },
  failed: {
    en: "That did not work: {problem}",
    es: "No funcionó: {problem}",
    fr: "Échec : {problem}",
  },
} as const satisfies Record<string, Text>;
