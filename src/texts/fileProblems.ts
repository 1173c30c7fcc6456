import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Why a file could not be read: one sentence per code, naming the file and the place. */
export const FILE_PROBLEMS: Readonly<Record<string, Text>> = {
  noFile: t(
    'There is no file "{file}"; check its name and folder.',
    'No existe el archivo "{file}"; revise el nombre y la carpeta.',
    "Le fichier « {file} » n'existe pas ; vérifiez son nom et son dossier.",
  ),
  noFiles: t(
    'The folder "{folder}" has no .xlsx, .xlsm, .csv or .tsv file.',
    'La carpeta "{folder}" no tiene archivos .xlsx, .xlsm, .csv ni .tsv.',
    "Le dossier « {folder} » n'a aucun fichier .xlsx, .xlsm, .csv ou .tsv.",
  ),
  unreadableFile: t(
    'The file "{file}" cannot be opened ({reason}).',
    'No se puede abrir el archivo "{file}" ({reason}).',
    "Le fichier « {file} » ne peut pas être ouvert ({reason}).",
  ),
  emptyFile: t(
    'The file "{file}" is empty.',
    'El archivo "{file}" está vacío.',
    "Le fichier « {file} » est vide.",
  ),
  notAWorkbook: t(
    '"{file}" is not a workbook of the .xlsx kind; save it as Excel workbook (.xlsx) or as csv and try again.',
    '"{file}" no es un libro .xlsx; guárdelo como libro de Excel (.xlsx) o como csv y repita.',
    "« {file} » n'est pas un classeur .xlsx ; enregistrez-le comme classeur Excel (.xlsx) ou en csv, puis recommencez.",
  ),
  oldOrLockedFile: t(
    '"{file}" is an old .xls workbook or has a password; save it as .xlsx without a password and try again.',
    '"{file}" es un libro .xls antiguo o tiene contraseña; guárdelo como .xlsx sin contraseña y repita.',
    "« {file} » est un ancien classeur .xls ou a un mot de passe ; enregistrez-le en .xlsx sans mot de passe, puis recommencez.",
  ),
  lockedFile: t(
    'Parts of "{file}" are encrypted; save it without a password and try again.',
    'Hay partes de "{file}" cifradas; guárdelo sin contraseña y repita.',
    "Des parties de « {file} » sont chiffrées ; enregistrez-le sans mot de passe, puis recommencez.",
  ),
  binaryWorkbook: t(
    '"{file}" is a binary workbook (.xlsb); save it as .xlsx and try again.',
    '"{file}" es un libro binario (.xlsb); guárdelo como .xlsx y repita.',
    "« {file} » est un classeur binaire (.xlsb) ; enregistrez-le en .xlsx, puis recommencez.",
  ),
  damagedFile: t(
    '"{file}" is damaged: its list of parts does not fit the file. Ask for it to be sent again.',
    '"{file}" está dañado: su lista de partes no corresponde al archivo. Pida que lo envíen otra vez.',
    "« {file} » est abîmé : sa liste de parties ne correspond pas au fichier. Demandez qu'on le renvoie.",
  ),
  damagedPart: t(
    '"{file}" is damaged: its part {part} cannot be unpacked. Ask for it to be sent again.',
    '"{file}" está dañado: su parte {part} no se puede descomprimir. Pida que lo envíen otra vez.',
    "« {file} » est abîmé : sa partie {part} ne peut pas être décompressée. Demandez qu'on le renvoie.",
  ),
  missingPart: t(
    '"{file}" is damaged: it refers to a part {part} that it does not have.',
    '"{file}" está dañado: menciona una parte {part} que no tiene.',
    "« {file} » est abîmé : il renvoie à une partie {part} qu'il ne contient pas.",
  ),
  badXml: t(
    '"{file}" is damaged: its part {part} is not well-formed.',
    '"{file}" está dañado: su parte {part} está mal formada.',
    "« {file} » est abîmé : sa partie {part} est mal formée.",
  ),
  tooManyParts: t(
    '"{file}" was not read: it has more than {most} parts, which no workbook needs.',
    '"{file}" no se leyó: tiene más de {most} partes, más de las que necesita un libro.',
    "« {file} » n'a pas été lu : il a plus de {most} parties, ce dont aucun classeur n'a besoin.",
  ),
  samePartTwice: t(
    '"{file}" was not read: it has two parts of the name {part}.',
    '"{file}" no se leyó: tiene dos partes con el nombre {part}.',
    "« {file} » n'a pas été lu : il a deux parties du nom {part}.",
  ),
  badPartName: t(
    '"{file}" was not read: the part name {part} leads out of the file.',
    '"{file}" no se leyó: el nombre de parte {part} sale del archivo.',
    "« {file} » n'a pas été lu : le nom de partie {part} sort du fichier.",
  ),
  unknownPacking: t(
    '"{file}" was not read: its part {part} is packed in a way that workbooks do not use.',
    '"{file}" no se leyó: su parte {part} está comprimida de un modo que los libros no usan.',
    "« {file} » n'a pas été lu : sa partie {part} est compressée d'une façon étrangère aux classeurs.",
  ),
  expandsTooFar: t(
    '"{file}" was not read: unpacked it would be {times} times its size; the limit is {most} (option --expansion).',
    '"{file}" no se leyó: descomprimido ocuparía {times} veces su tamaño; el límite es {most} (opción --expansion).',
    "« {file} » n'a pas été lu : décompressé, il ferait {times} fois sa taille ; la limite est {most} (option --expansion).",
  ),
  sizeLies: t(
    '"{file}" was not read: its part {part} is not of the size that the file says.',
    '"{file}" no se leyó: su parte {part} no tiene el tamaño que el archivo declara.',
    "« {file} » n'a pas été lu : sa partie {part} n'a pas la taille que le fichier annonce.",
  ),
  tooLargeToHold: t(
    '"{file}" is too large to be held in memory; use the command line.',
    '"{file}" es demasiado grande para la memoria; use la línea de comandos.',
    "« {file} » est trop grand pour tenir en mémoire ; utilisez la ligne de commande.",
  ),
  documentType: t(
    '"{file}" was not read: its part {part} declares a document type, which no workbook needs.',
    '"{file}" no se leyó: su parte {part} declara un tipo de documento, que ningún libro necesita.',
    "« {file} » n'a pas été lu : sa partie {part} déclare un type de document, ce dont aucun classeur n'a besoin.",
  ),
  tooDeep: t(
    '"{file}" was not read: its part {part} nests more than {most} elements.',
    '"{file}" no se leyó: su parte {part} anida más de {most} elementos.',
    "« {file} » n'a pas été lu : sa partie {part} imbrique plus de {most} éléments.",
  ),
  tooMuchText: t(
    '"{file}" was not read: {part} holds more than {most} characters in one place.',
    '"{file}" no se leyó: {part} contiene más de {most} caracteres en un solo lugar.',
    "« {file} » n'a pas été lu : {part} contient plus de {most} caractères en un seul endroit.",
  ),
  tooManyCells: t(
    'Sheet "{sheet}" of "{file}" spans more than {most} cells; clear stray cells far from the table and try again.',
    'La hoja "{sheet}" de "{file}" abarca más de {most} celdas; borre las celdas sueltas lejos de la tabla y repita.',
    "La feuille « {sheet} » de « {file} » couvre plus de {most} cellules ; effacez les cellules isolées loin du tableau, puis recommencez.",
  ),
  sameSheetTwice: t(
    '"{file}" is damaged: it has two sheets of the name "{sheet}".',
    '"{file}" está dañado: tiene dos hojas con el nombre "{sheet}".',
    "« {file} » est abîmé : il a deux feuilles du nom « {sheet} ».",
  ),
  rowPastLimit: t(
    'Sheet "{sheet}" of "{file}" is damaged: row {row} lies past the last possible row {most}.',
    'La hoja "{sheet}" de "{file}" está dañada: la fila {row} pasa de la última posible, {most}.',
    "La feuille « {sheet} » de « {file} » est abîmée : la ligne {row} dépasse la dernière possible, {most}.",
  ),
  columnPastLimit: t(
    'Sheet "{sheet}" of "{file}" is damaged: cell {cell} lies past the last possible column {most}.',
    'La hoja "{sheet}" de "{file}" está dañada: la celda {cell} pasa de la última columna posible, {most}.',
    "La feuille « {sheet} » de « {file} » est abîmée : la cellule {cell} dépasse la dernière colonne possible, {most}.",
  ),
  rowTwice: t(
    'Sheet "{sheet}" of "{file}" is damaged: row {row} stands twice or out of order.',
    'La hoja "{sheet}" de "{file}" está dañada: la fila {row} está dos veces o fuera de orden.',
    "La feuille « {sheet} » de « {file} » est abîmée : la ligne {row} y est deux fois ou hors de l'ordre.",
  ),
  cellTwice: t(
    'Sheet "{sheet}" of "{file}" is damaged: cell {cell} in row {row} stands twice or out of order.',
    'La hoja "{sheet}" de "{file}" está dañada: la celda {cell} de la fila {row} está dos veces o fuera de orden.',
    "La feuille « {sheet} » de « {file} » est abîmée : la cellule {cell} de la ligne {row} y est deux fois ou hors de l'ordre.",
  ),
  badCell: t(
    'Sheet "{sheet}" of "{file}" is damaged: {cell} in row {row} is not a cell of that row.',
    'La hoja "{sheet}" de "{file}" está dañada: {cell} en la fila {row} no es una celda de esa fila.',
    "La feuille « {sheet} » de « {file} » est abîmée : {cell} en ligne {row} n'est pas une cellule de cette ligne.",
  ),
  badNumber: t(
    'Sheet "{sheet}" of "{file}" is damaged: row {row} has a number written as {value}.',
    'La hoja "{sheet}" de "{file}" está dañada: la fila {row} tiene un número escrito como {value}.',
    "La feuille « {sheet} » de « {file} » est abîmée : la ligne {row} contient un nombre écrit {value}.",
  ),
  notText: t(
    '"{file}" is not a text file; save it as csv from the spreadsheet and try again.',
    '"{file}" no es un archivo de texto; guárdelo como csv desde la hoja de cálculo y repita.',
    "« {file} » n'est pas un fichier texte ; enregistrez-le en csv depuis le tableur, puis recommencez.",
  ),
  openQuote: t(
    '"{file}" was not read: the quotation marks from row {row} on do not close as they should.',
    '"{file}" no se leyó: las comillas desde la fila {row} no cierran como deben.',
    "« {file} » n'a pas été lu : à partir de la ligne {row}, les guillemets ne se ferment pas comme il faut.",
  ),
  layoutUnknown: t(
    '"{file}" cannot be changed in place: its part {part} is laid out in a way that is not understood. Nothing was changed.',
    '"{file}" no se puede cambiar en el sitio: su parte {part} tiene una forma que no se entiende. No se cambió nada.',
    "« {file} » ne peut pas être modifié sur place : sa partie {part} a une forme qui n'est pas comprise. Rien n'a été changé.",
  ),
  signedFile: t(
    '"{file}" carries a digital signature, which any change would break. Nothing was changed.',
    '"{file}" lleva una firma digital que cualquier cambio rompería. No se cambió nada.',
    "« {file} » porte une signature numérique que tout changement romprait. Rien n'a été changé.",
  ),
  openElsewhere: t(
    '"{file}" is open in another program; close it there and run again. Nothing was changed.',
    '"{file}" está abierto en otro programa; ciérrelo y repita. No se cambió nada.',
    "« {file} » est ouvert dans un autre programme ; fermez-le, puis recommencez. Rien n'a été changé.",
  ),
  changedMeanwhile: t(
    '"{file}" was saved by somebody else meanwhile; run again. Nothing was changed.',
    'Alguien guardó "{file}" entretanto; repita. No se cambió nada.',
    "Quelqu'un a enregistré « {file} » entre-temps ; recommencez. Rien n'a été changé.",
  ),
  diskFull: t(
    'There is no room on the disk for "{file}" ({reason}). Nothing was changed.',
    'No hay espacio en el disco para "{file}" ({reason}). No se cambió nada.',
    "Il n'y a plus de place sur le disque pour « {file} » ({reason}). Rien n'a été changé.",
  ),
  mayNotWrite: t(
    '"{file}" cannot be written ({reason}). Nothing was changed.',
    'No se puede escribir "{file}" ({reason}). No se cambió nada.',
    "« {file} » ne peut pas être écrit ({reason}). Rien n'a été changé.",
  ),
  fileExists: t(
    'There is a file "{file}" already; name another one with --out. Nothing was changed.',
    'Ya existe un archivo "{file}"; indique otro con --out. No se cambió nada.',
    "Un fichier « {file} » existe déjà ; nommez-en un autre avec --out. Rien n'a été changé.",
  ),
};
