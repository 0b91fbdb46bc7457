-- The rows of the reference tables (db/tables/*.csv) for browsing. Filled anew whenever the files have changed; no mark
-- reads them: a compiled key carries its own.

create table reference_row (
    table_name varchar(100) not null,
    file varchar(200) not null,
    line integer not null,
    cells varchar not null,      -- JSON, column by column
    source varchar(1000) not null,
    confidence varchar(30) not null,
    primary key (file, line)
);

create index reference_row_table on reference_row (table_name);
