#!/usr/bin/env python3
"""Between Gammu SMSD and Bellyful, on one small computer with a phone or modem. Python's own library only.

    bridge.py receive ID...   as SMSD's RunOnReceive: keeps the text in the spool, then hands in what is spooled
    bridge.py sent NAME       as SMSD's RunOnSent: notes under which reference the network knows a text of the bot's
    bridge.py serve           takes the bot's texts on 127.0.0.1:9000/send for gammu-smsd-inject; empties the spool

A text or delivery report leaves the spool only when Bellyful has acknowledged it. Settings from the environment:
BELLYFUL_SECRET (needed), BELLYFUL_IN (http://127.0.0.1:8080/in/plain), BELLYFUL_RECEIPT (.../receipt/plain),
BELLYFUL_SPOOL (/var/spool/bellyful), GAMMU_CONFIG (/etc/gammu-smsdrc). Never prints words or numbers of families.
"""
import configparser
import hashlib
import hmac
import http.server
import json
import os
import pathlib
import re
import subprocess
import sys
import threading
import time
import urllib.error
import urllib.request

SECRET = os.environ.get("BELLYFUL_SECRET", "").encode()
IN = os.environ.get("BELLYFUL_IN", "http://127.0.0.1:8080/in/plain")
RECEIPT = os.environ.get("BELLYFUL_RECEIPT", IN.replace("/in/", "/receipt/"))
SPOOL = pathlib.Path(os.environ.get("BELLYFUL_SPOOL", "/var/spool/bellyful"))
GAMMU = os.environ.get("GAMMU_CONFIG", "/etc/gammu-smsdrc")
LISTEN = ("127.0.0.1", int(os.environ.get("BELLYFUL_SEND_PORT", "9000")))


def sign(body):
    return "sha256=" + hmac.new(SECRET, body, hashlib.sha256).hexdigest()


def keep(path, value):
    """Durably, and whole or not at all."""
    part = path.with_suffix(".part")
    with open(part, "w", encoding="utf-8") as file:
        json.dump(value, file)
        file.flush()
        os.fsync(file.fileno())
    part.rename(path)


def received(ids, environment):
    """What SMSD tells: parts that it joined are in DECODED_n_TEXT, else in SMS_n_TEXT."""
    decoded = int(environment.get("DECODED_PARTS", "0") or 0)
    if decoded:
        text = "".join(environment.get(f"DECODED_{n}_TEXT", "") for n in range(1, decoded + 1))
    else:
        text = "".join(environment.get(f"SMS_{n}_TEXT", "") for n in range(1, int(environment["SMS_MESSAGES"]) + 1))
    sender = environment["SMS_1_NUMBER"]
    # SMSD counts its files anew each day and may use a name again: the words are part of the id.
    name = " ".join(ids) + sender + text
    return {"id": hashlib.sha256(name.encode()).hexdigest()[:32], "from": sender, "text": text}


def waits_for_report(number, reference):
    """Where the id of the text stands that went to this number under this reference. Networks write a number with its
    country's code or without: the last digits tell. References are used again after 256 texts, newest wins."""
    return SPOOL / "reports" / f"{number[-7:]}-{reference}"


def reported(environment):
    """The delivery report that SMSD gives as a text of one word, or None: it is a text of somebody's."""
    said = {"Delivered": "delivered", "Failed": "failed", "Pending": "", "Unknown": ""}
    status = said.get(environment.get("SMS_1_TEXT", "").strip())
    if status is None or environment.get("SMS_MESSAGES") != "1":
        return None
    waits = waits_for_report(environment.get("SMS_1_NUMBER", ""), environment.get("SMS_1_REFERENCE", "0"))
    try:
        return {"id": waits.read_text(encoding="utf-8"), "status": status}
    except FileNotFoundError:
        return None


def sent(name):
    """SMSD wrote each part with the network's reference into a file, then all once more without; the last part's counts."""
    config = configparser.ConfigParser(interpolation=None, strict=False)
    config.read(GAMMU, encoding="utf-8")
    try:
        note = SPOOL / "injected" / pathlib.Path(name).name
        for _ in range(10):
            if note.exists():
                break
            time.sleep(0.1)  # SMSD may be faster than the note.
        ident = note.read_text(encoding="utf-8")
        file = pathlib.Path(config.get("smsd", "sentsmspath")) / pathlib.Path(name).name
        written = file.read_text(encoding="utf-8", errors="replace")
    except (OSError, configparser.Error):
        return  # Not the bot's, or no such file: there will be no report of it.
    references = re.findall(r"^MessageReference = (\d+)", written, re.M)
    number = re.search(r'^Number = "([^"]*)"', written, re.M)
    if references and number:
        last = references[max(len(references) // 2 - 1, 0)]
        waits_for_report(number[1], last).write_text(ident, encoding="utf-8")


def hand_in():
    """Hands in what is spooled, oldest first; stops at the first that is not taken for now."""
    for path in sorted([*SPOOL.glob("*.json"), *SPOOL.glob("*.report")]):
        try:
            body = path.read_bytes()
        except FileNotFoundError:
            continue  # Another of us handed it in.
        to = RECEIPT if path.suffix == ".report" else IN
        call = urllib.request.Request(to, body, {"Content-Type": "application/json", "X-Signature": sign(body)})
        try:
            with urllib.request.urlopen(call, timeout=35):
                path.unlink(missing_ok=True)
        except urllib.error.HTTPError as error:
            if error.code in (400, 413):
                path.rename(path.with_suffix(".refused"))
                print(f"a text was refused for good: {path.with_suffix('.refused')}", file=sys.stderr)
                continue
            return
        except OSError:
            return


class Send(http.server.BaseHTTPRequestHandler):
    lock = threading.Lock()

    def do_POST(self):
        body = self.rfile.read(min(int(self.headers.get("Content-Length", 0)), 65536))
        if not hmac.compare_digest(self.headers.get("X-Signature", ""), sign(body)):
            return self.answer(401)
        try:
            said = json.loads(body)
            ident, to, text = str(said["id"]), str(said["to"]), str(said["text"])
        except (ValueError, KeyError, TypeError):
            return self.answer(400)
        if not to.lstrip("+").isdigit():
            return self.answer(400)
        with Send.lock:
            done = SPOOL / "sent" / hashlib.sha256(ident.encode()).hexdigest()
            if not done.exists():
                order = ["gammu-smsd-inject", "-c", GAMMU, "TEXT", to, "-autolen", str(len(text))]
                order += [] if text.isascii() else ["-unicode"]
                try:
                    ran = subprocess.run(order, input=text.encode(), check=True, capture_output=True, timeout=20)
                except (subprocess.SubprocessError, OSError):
                    return self.answer(503)
                done.touch()
                name = re.search(rb"Written message with ID (\S+)", ran.stdout + ran.stderr)
                if name:
                    (SPOOL / "injected" / pathlib.Path(name[1].decode()).name).write_text(ident, encoding="utf-8")
        return self.answer(200)

    def answer(self, status):
        self.send_response(status)
        self.send_header("Content-Length", "2")
        self.end_headers()
        self.wfile.write(b"{}")

    def log_message(self, *_):
        pass


NOTES = ["sent", "injected", "reports"]


def empty_the_spool():
    while True:
        hand_in()
        month_ago = time.time() - 30 * 86400
        for done in [path for folder in NOTES for path in (SPOOL / folder).iterdir()]:
            if done.stat().st_mtime < month_ago:
                done.unlink()
        time.sleep(5)


def main():
    if not SECRET or sys.argv[1:2] not in (["receive"], ["sent"], ["serve"]):
        sys.exit("Set BELLYFUL_SECRET and say `receive`, `sent` or `serve`.")
    for folder in NOTES:
        (SPOOL / folder).mkdir(parents=True, exist_ok=True)
    if sys.argv[1] == "receive":
        report = reported(os.environ)
        if report is None:
            message = received(sys.argv[2:], os.environ)
            keep(SPOOL / f"{time.time_ns()}-{message['id']}.json", message)
        elif report["status"]:
            keep(SPOOL / f"{time.time_ns()}-{report['id']}.report", report)
        hand_in()
    elif sys.argv[1] == "sent":
        sent((sys.argv[2:] or [""])[-1])
    else:
        threading.Thread(target=empty_the_spool, daemon=True).start()
        http.server.ThreadingHTTPServer(LISTEN, Send).serve_forever()


main()
