/** Bytes of the file that Office hands over in one piece; 4 MB is the most it takes. */
const SLICE_SIZE = 4_194_304;

/** The part of Office.context.document that is used. */
export type OfficeDocument = Pick<Office.Document, "getFileAsync">;

/**
 * The open workbook as the bytes of an .xlsx file, as it stands now, saved or not.
 *
 * @throws Error with Office's own message
 */
export async function excelFile(document: OfficeDocument): Promise<Uint8Array> {
  const file = await answered<Office.File>((callback) =>
    document.getFileAsync("compressed" as unknown as Office.FileType, { sliceSize: SLICE_SIZE }, callback),
  );
  try {
    const bytes = new Uint8Array(file.size);
    let at = 0;
    for (let index = 0; index < file.sliceCount; index++) {
      const slice = await answered<Office.Slice>((callback) => file.getSliceAsync(index, callback));
      bytes.set(slice.data as ArrayLike<number>, at);
      at += slice.size;
    }
    return bytes;
  } finally {
    file.closeAsync();
  }
}

function answered<T>(ask: (callback: (result: Office.AsyncResult<T>) => void) => void): Promise<T> {
  return new Promise((resolve, reject) =>
    ask((result) =>
      result.status === ("succeeded" as unknown as Office.AsyncResultStatus)
        ? resolve(result.value)
        : reject(new Error(result.error.message)),
    ),
  );
}
