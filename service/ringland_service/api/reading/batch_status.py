"""What became of a row of a batch, in one word; the same word in JSON, CSV and lines of JSON."""

OK, REFUSED, NOT_REACHED = "ok", "refused", "not_reached"
STATUSES: dict[str, str] = {
    OK: "answered",
    REFUSED: "not answered: what is wrong with it stands under problems",
    NOT_REACHED: "not answered for want of time: send the row again",
}
