import { untrack } from "svelte";
import type { DocumentEdit } from "../../core/base";
import { earlierSentence, foundSentence, givesUpSentence } from "../../words";
import { getDesk, getShop } from "../state";
import { Looking } from "./looking.svelte";

/**
 * The search for an earlier finish as a part of the page sees it, made with that part: it goes on while the part is on the screen and nothing else is done,
 * and what it finds is taken over only when asked to.
 */
export class Seeking {
  readonly #desk = getDesk();
  readonly #shop = getShop();
  readonly looking: Looking;
  hidden = $state(document.hidden);
  #tried = $state(false);
  readonly status = $derived.by(() => {
    const { planOf, build, redoing, plan } = this.#desk;
    return planOf === build && !redoing ? (plan?.status ?? null) : null;
  });
  /** Also where the quick passes found no plan: there may be one, or it may be shown that there is none. */
  readonly planned = $derived.by(() => {
    const { build, findings } = this.#desk;
    if (build === null || build.steps.length === 0) return false;
    return this.status === "planned" || (this.status === "not-found" && findings.some(({ code }) => code === "plan.not-found"));
  });
  /** The build aims at something else, or steps wait on purpose: an earlier finish would undo that, so it is looked for only when asked. */
  readonly aimed = $derived.by(() => {
    const { build } = this.#desk;
    return build?.aim != null || build?.served?.from !== undefined;
  });
  readonly answer = $derived.by(() => (this.planned ? this.looking.answer : null));
  readonly better = $derived.by(() => this.answer?.served ?? null);
  /** Of the plan that was found; empty where there is none. */
  readonly sentence = $derived.by(() => {
    const { build, units } = this.#desk;
    if (!this.better || !this.answer || !build) return "";
    const { sought } = this.answer;
    const found = sought.finishWas === null ? foundSentence(sought, build) : earlierSentence(sought, build, units);
    return build.aim == null ? found : `${found} ${givesUpSentence(build.aim)}`;
  });
  readonly shown = $derived.by(() => this.#desk.trial !== null && this.#tried);

  constructor() {
    const desk = this.#desk;
    const shop = this.#shop;
    shop.looking ??= new Looking((document, upTo) => shop.earlier(document, upTo));
    const looking = shop.looking;
    this.looking = looking;
    const quiet = $derived(this.planned && desk.trial === null && !this.hidden);
    $effect(() => {
      const { document } = desk;
      if (!quiet) return;
      const byItself = !this.aimed;
      untrack(() => looking.rest(document, byItself));
      return () => looking.pause();
    });
    $effect(() => {
      const hide = (): void => {
        this.hidden = document.hidden;
      };
      document.addEventListener("visibilitychange", hide);
      return () => document.removeEventListener("visibilitychange", hide);
    });
    $effect(() => {
      if (desk.trial === null) this.#tried = false;
    });
    $effect(() => {
      const { sentence } = this;
      if (sentence === "" || sentence === looking.said) return;
      looking.said = sentence;
      untrack(() => desk.say(sentence));
    });
  }

  #edits(): readonly DocumentEdit[] {
    const served: DocumentEdit = { path: ["served"], value: this.better };
    return this.#desk.build?.aim == null ? [served] : [{ path: ["aim"] }, served];
  }

  /** What would move with the plan that was found, or the plan as it is again. */
  show(): void {
    const { shown } = this;
    this.#desk.tryOut(shown ? null : this.#edits());
    this.#tried = !shown;
  }

  use(): void {
    if (this.better === null) return;
    this.#desk.edit(this.#edits(), "use the earlier plan");
    this.looking.took(this.#desk.document);
  }
}
