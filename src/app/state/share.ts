/**
 * Hands the text to another program of this machine, as a file. "none": this browser hands over no files; "failed": the machine would not.
 * It goes as plain text: browsers that hand over files at all take those, and not all of them take JSON (from memory).
 */
export async function shareFile(text: string, fileName: string, title: string): Promise<"shared" | "left" | "none" | "failed"> {
  const file = new File([text], fileName.replace(/\.json$/, ".txt"), { type: "text/plain" });
  if (!canShare(file)) return "none";
  try {
    await navigator.share({ files: [file], title });
    return "shared";
  } catch (error) {
    return error instanceof DOMException && error.name === "AbortError" ? "left" : "failed";
  }
}

function canShare(file: File): boolean {
  try {
    return navigator.canShare?.({ files: [file] }) ?? false;
  } catch {
    return false;
  }
}
