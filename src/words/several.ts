const joins = /,| (?:of|in|with|to|for|over|under|on|at|from|around|behind|by|along|between) /;

/** Whether a name that somebody gave, like "Shores and joists" or "Ribs in halves", takes its verb as several do. Told by its words alone. */
export function isSeveral(name: string): boolean {
  const [head = ""] = name.trim().split(joins);
  return / (?:and|&) /.test(head) || /[^sui]s$/i.test(head);
}
