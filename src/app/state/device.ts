import { fileOpen, fileSave } from "browser-fs-access";

/** A file's text and name; "left": the builder changed his mind; "unreadable": the machine would not give it. */
export type Picked = { readonly text: string; readonly name: string } | "left" | "unreadable";

const isCancel = (error: unknown): boolean => error instanceof DOMException && error.name === "AbortError";

export async function textOfFile(file: File): Promise<Picked> {
  try {
    return { text: await file.text(), name: file.name };
  } catch {
    return "unreadable";
  }
}

/** Lets the builder choose a build file. */
export async function pickFile(): Promise<Picked> {
  try {
    return await textOfFile(
      await fileOpen({
        description: "Build files",
        mimeTypes: ["application/json", "text/plain"],
        extensions: [".json", ".txt"],
        id: "batterboard",
      }),
    );
  } catch (error) {
    return isCancel(error) ? "left" : "unreadable";
  }
}

/** Lets the builder choose where the text goes. */
export async function saveFile(text: string, fileName: string): Promise<"saved" | "left" | "failed"> {
  const blob = new Blob([text], { type: "application/json" });
  try {
    await fileSave(blob, { fileName, extensions: [".json"], description: "Build file", id: "batterboard" });
    return "saved";
  } catch (error) {
    return isCancel(error) ? "left" : "failed";
  }
}

/** Making one of these takes longer than all else about a date. */
const formats = new Map<string | null, Intl.DateTimeFormat>();

/** Today's date on the wall at a zone: "2027-06-26". */
export function dateAt(zone: string | null): string {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat("en-CA", { timeZone: zone ?? undefined, year: "numeric", month: "2-digit", day: "2-digit" });
    formats.set(zone, format);
  }
  return format.format(new Date());
}
