"""Recalculates a sheet of formulas in LibreOffice Calc and tells the median time of a hard recalculation in milliseconds.

In: {"runs": n, "cells": [[formula or number, ...], ...], "sum": "A1:A9"}; out: {"ms": t, "total": s}.
"""
import json
import os
import subprocess
import sys
import tempfile
import time

import uno
from com.sun.star.connection import NoConnectException

given = json.load(sys.stdin)
pipe = f"gudgeon{os.getpid()}"
home = tempfile.mkdtemp()
office = subprocess.Popen(
    ["soffice", "--headless", "--norestore", "--nologo", f"-env:UserInstallation=file://{home}", f"--accept=pipe,name={pipe};urp;"],
    stdout=subprocess.DEVNULL,
    stderr=subprocess.DEVNULL,
)
try:
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(240):
        try:
            context = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
            break
        except NoConnectException:
            time.sleep(0.25)
    desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
    hidden = uno.createUnoStruct("com.sun.star.beans.PropertyValue")
    hidden.Name, hidden.Value = "Hidden", True
    book = desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, (hidden,))
    sheet = book.Sheets.getByIndex(0)
    rows = given["cells"]
    area = sheet.getCellRangeByPosition(0, 0, len(rows[0]) - 1, len(rows) - 1)
    area.setFormulaArray(tuple(tuple(row) for row in rows))
    times = []
    for _ in range(given["runs"]):
        start = time.perf_counter()
        book.calculateAll()
        times.append((time.perf_counter() - start) * 1000)
    total = sum(value for row in sheet.getCellRangeByName(given["sum"]).getDataArray() for value in row)
    book.close(True)
    print(json.dumps({"ms": sorted(times)[len(times) // 2], "total": total}), flush=True)
finally:
    office.terminate()
# The answer is out. The bridge to an office that is going down can take the interpreter with it on its way out.
os._exit(0)
