"""Makes the ordinary workbooks of this folder: invented figures, everyday sheets, by generators that are not ours.

    apt-get install python3-openpyxl python3-xlsxwriter gnumeric
    python3 make.py

XlsxWriter writes four by itself; openpyxl writes four, which Gnumeric's ssconvert calculates and writes anew, so that they
hold values as well. The files are kept, since CI has none of the three programs.
"""
import datetime, os, subprocess, sys, tempfile
import openpyxl
from openpyxl.workbook.defined_name import DefinedName
import xlsxwriter

here = os.path.dirname(os.path.abspath(__file__))


def through_gnumeric(name, book):
    with tempfile.TemporaryDirectory() as folder:
        raw = os.path.join(folder, "raw.xlsx")
        book.save(raw)
        subprocess.run(["ssconvert", "--recalc", "-T", "Gnumeric_Excel:xlsx2", raw, os.path.join(here, name)], check=True)


def household_budget():
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Budget"
    sheet.append(["Household budget", None, None, None, None])
    sheet.append(["Item", "Jan", "Feb", "Mar", "Total"])
    for row, (item, *months) in enumerate(
        [("Rent", 820, 820, 820), ("Food", 410, 388.5, 402), ("Travel", 95, None, 120), ("Phone", 22, 22, 22), ("Sundry", None, None, 64)], 3
    ):
        sheet.append([item, *months, f"=SUM(B{row}:D{row})"])
    sheet.append(["Total", "=SUM(B3:B7)", "=SUM(C3:C7)", "=SUM(D3:D7)", "=SUM(E3:E7)"])
    sheet.append(["Income", 1600, 1600, 1640, "=SUM(B9:D9)"])
    sheet.append(["Left", "=B9-B8", "=C9-C8", "=D9-D8", "=E9-E8"])
    sheet.append(["Saved share", "=B10/B9", "=C10/C9", "=D10/D9", '=IFERROR(E10/E9,0)'])
    for cell in sheet[11][1:]:
        cell.number_format = "0.0%"
    through_gnumeric("household-budget.xlsx", book)


def nurse_roster():
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Roster"
    sheet.append(["Name", "Hours", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun", "Days on", "Over?"])
    shifts = [("Adira", 38, "DD-N-DD"), ("Bekele", 36, "NN--DDD"), ("Chau", 40, "D-DDD-N"), ("Dorit", 20, "--DD---"), ("Emeka", 38, "DDD-NN-")]
    for row, (name, hours, week) in enumerate(shifts, 2):
        sheet.append([name, hours, *[None if day == "-" else day for day in week], f'=COUNTA(C{row}:I{row})', f'=IF(J{row}*8>B{row},"over","ok")'])
    sheet.append(["On duty", None, *[f'=COUNTA({column}2:{column}6)' for column in "CDEFGHI"], "=SUM(J2:J6)", '=IF(COUNTIF(K2:K6,"over")=0,"ok","see above")'])
    through_gnumeric("nurse-roster.xlsx", book)


def generator_log():
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Log"
    sheet.append(["Date", "Hour meter", "Hours run", "Fuel in (gal)", "Oil (psi)", "Coolant (°F)", "Gal per hour"])
    meter, day = 4120.5, datetime.date(2026, 3, 2)
    for row in range(2, 32):
        meter += [6.5, 8, 0, 7.2, 9.1][row % 5]
        sheet.append([day + datetime.timedelta(days=row - 2), meter, None if row == 2 else f"=B{row}-B{row - 1}", 12 if row % 4 == 0 else None, 52 + row % 3, 181 + row % 6, f'=IF(OR(D{row}="",C{row}=0),"",D{row}/C{row})'])
    sheet["A33"], sheet["C33"], sheet["D33"] = "Sum", "=SUM(C2:C31)", "=SUM(D2:D31)"
    sheet["A34"], sheet["C34"] = "Last service at", "'4000"
    sheet["A35"], sheet["C35"] = "Hours since", "=MAX(B2:B31)-4000"
    through_gnumeric("generator-log.xlsx", book)


def stores():
    book = openpyxl.Workbook()
    items, moves = book.active, book.create_sheet("Moves")
    items.title = "Items"
    items.append(["Code", "Name", "Opening", "In", "Out", "On hand", "Least", "Order"])
    for row, (code, name, opening, least) in enumerate([("M01", "Mask, adult", 240, 60), ("M02", "Mask, child", 80, 40), ("C10", "Cannula", 400, 120), ("H05", "Humidifier", 26, 10)], 2):
        items.append([code, name, opening, f"=SUMIFS(Moves!$C$2:$C$200,Moves!$B$2:$B$200,A{row},Moves!$C$2:$C$200,\">0\")", f"=-SUMIFS(Moves!$C$2:$C$200,Moves!$B$2:$B$200,A{row},Moves!$C$2:$C$200,\"<0\")", f"=C{row}+D{row}-E{row}", least, f"=IF(F{row}<G{row},G{row}*2-F{row},0)"])
    moves.append(["Date", "Code", "Pieces"])
    for index in range(40):
        moves.append([datetime.date(2026, 4, 1) + datetime.timedelta(days=index // 2), ["M01", "C10", "M02", "H05"][index % 4], [-30, -22, 25, -3, 100][index % 5]])
    moves.sheet_state = "visible"
    notes = book.create_sheet("Lists")
    notes.append(["Codes"])
    for row in range(2, 6):
        notes.append([f"=Items!A{row}"])
    notes.sheet_state = "hidden"
    book.defined_names.append(DefinedName("level", attr_text="Items!$F$2:$F$5"))
    items["A8"], items["F8"] = "All pieces", "=SUM(level)"
    through_gnumeric("stores.xlsx", book)


def timeline():
    book = xlsxwriter.Workbook(os.path.join(here, "building-timeline.xlsx"))
    date = book.add_format({"num_format": "dd/mm/yyyy"})
    sheet = book.add_worksheet("Timeline")
    sheet.write_row("A1", ["Step", "Starts", "Days", "Ends", "Done", "Late"])
    start = 46082
    steps = [("Clear ground", 5, 1), ("Slab", 12, 1), ("Walls", 20, 0.6), ("Roof", 9, 0), ("Wiring", 7, 0), ("Hand over", 1, 0)]
    for row, (name, days, done) in enumerate(steps, 2):
        sheet.write(f"A{row}", name)
        if row == 2:
            sheet.write(f"B{row}", start, date)
        else:
            sheet.write_formula(f"B{row}", f"=D{row - 1}+1", date, start)
        sheet.write(f"C{row}", days)
        sheet.write_formula(f"D{row}", f"=WORKDAY(B{row},C{row}-1)", date, start + days)
        sheet.write(f"E{row}", done, book.add_format({"num_format": "0%"}))
        sheet.write_formula(f"F{row}", f'=IF(AND(E{row}<1,D{row}<TODAY()),"late","ok")', None, "ok")
        start += days + 1
    sheet.write_formula("C9", "=SUM(C2:C7)", None, 54)
    sheet.conditional_format("F2:F7", {"type": "cell", "criteria": "==", "value": '"late"', "format": book.add_format({"bg_color": "#ffcccc"})})
    chart = book.add_chart({"type": "bar"})
    chart.add_series({"categories": "=Timeline!$A$2:$A$7", "values": "=Timeline!$C$2:$C$7"})
    sheet.insert_chart("H2", chart)
    book.close()


def loan():
    book = xlsxwriter.Workbook(os.path.join(here, "loan-table.xlsx"))
    sheet = book.add_worksheet("Loan")
    money, date = book.add_format({"num_format": "#,##0.00"}), book.add_format({"num_format": "yyyy-mm-dd"})
    sheet.write_column("A1", ["Lent", "Rate a year", "Months"])
    sheet.write("B1", 12000, money), sheet.write("B2", 0.061, book.add_format({"num_format": "0.00%"})), sheet.write("B3", 24)
    book.define_name("Rate", "=Loan!$B$2"), book.define_name("capacity", "=Loan!$B$1")
    pay = 12000 * (0.061 / 12) / (1 - (1 + 0.061 / 12) ** -24)
    sheet.write("A4", "To pay a month"), sheet.write_formula("B4", "=-PMT(Rate/12,B3,capacity)", money, pay)
    sheet.write_row("A6", ["No.", "Due", "Interest", "Paid back", "Left"])
    left = 12000
    for index in range(24):
        row = 7 + index
        interest = left * 0.061 / 12
        sheet.write(f"A{row}", index + 1)
        sheet.write_formula(f"B{row}", f"=EDATE(DATE(2026,1,15),A{row}-1)", date, 46037 + 30 * index)
        before = "capacity" if index == 0 else f"E{row - 1}"
        sheet.write_formula(f"C{row}", f"=ROUND({before}*Rate/12,2)", money, round(interest, 2))
        sheet.write_formula(f"D{row}", f"=$B$4-C{row}", money, pay - interest)
        left -= pay - interest
        sheet.write_formula(f"E{row}", f"={before}-D{row}", money, left)
    sheet.write("A31", "Total"), sheet.write_formula("C31", "=SUM(C7:C30)", money, 770.1), sheet.write_formula("D31", "=SUM(D7:D30)", money, 12000)
    book.close()


def survey():
    book = xlsxwriter.Workbook(os.path.join(here, "well-survey.xlsx"))
    sheet = book.add_worksheet("Wells")
    rows = [[f"W-{n:02}", 1200 + 35 * n, 42 + n % 7, 3.1 + n % 4 / 10, None if n % 6 == 0 else 7.1 + n % 5 / 10] for n in range(1, 31)]
    sheet.add_table("A3:F33", {"name": "Wells", "data": rows, "columns": [{"header": "Well"}, {"header": "Altitude (ft)"}, {"header": "Depth (ft)"}, {"header": "Yield (gal/min)"}, {"header": "pH"}, {"header": "Yield (L/h)", "formula": "=Wells[[#This Row],[Yield (gal/min)]]*3.785*60"}]})
    for row, values in enumerate(rows, 4):
        sheet.write_formula(f"F{row}", "=Wells[[#This Row],[Yield (gal/min)]]*3.785*60", None, values[3] * 3.785 * 60)
    sheet.write("A1", "Wells of the north valley")
    sheet.write("H3", "Mean depth"), sheet.write_formula("I3", "=AVERAGE(Wells[Depth (ft)])", None, 45.0)
    sheet.write("H4", "All yield"), sheet.write_formula("I4", "=SUM(Wells[Yield (L/h)])", None, 22000.0)
    sheet.write("H5", "With pH"), sheet.write_formula("I5", "=COUNT(Wells[pH])", None, 25)
    sheet.write("H6", "Nearest"), sheet.write_formula("I6", '=IFERROR(INDEX(Wells[Well],MATCH(I3,Wells[Depth (ft)],0)),"none")', None, "none")
    book.close()


def marks():
    book = xlsxwriter.Workbook(os.path.join(here, "class-marks.xlsx"))
    sheet, scale = book.add_worksheet("Marks"), book.add_worksheet("Scale")
    scale.write_row("A1", ["From", "Grade"])
    for row, pair in enumerate([(0, "E"), (50, "D"), (60, "C"), (75, "B"), (90, "A")], 1):
        scale.write_row(row, 0, pair)
    scale.hide()
    sheet.write_row("A1", ["Pupil", "Test 1", "Test 2", "Test 3", "Mean", "Grade"])
    for n in range(25):
        row = n + 2
        given = [55 + (n * 7) % 40, 48 + (n * 11) % 50, None if n % 9 == 4 else 60 + (n * 5) % 35]
        sheet.write(f"A{row}", f"Pupil {n + 1}")
        for column, value in zip("BCD", given):
            if value is not None:
                sheet.write(f"{column}{row}", value)
        known = [value for value in given if value is not None]
        mean = sum(known) / len(known)
        sheet.write_formula(f"E{row}", f"=AVERAGE(B{row}:D{row})", None, mean)
        sheet.write_formula(f"F{row}", f"=VLOOKUP(E{row},Scale!$A$2:$B$6,2,TRUE)", None, "C")
    sheet.write("A28", "Class"), sheet.write_formula("E28", "=AVERAGE(E2:E26)", None, 70.2)
    book.close()


for make in (household_budget, nurse_roster, generator_log, stores, timeline, loan, survey, marks):
    make()
sys.stdout.write("8 workbooks\n")
