const signs: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text that may hold anything, for an HTML page. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"]/g, (sign) => signs[sign]!);
