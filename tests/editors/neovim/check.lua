-- Makes the mistake in Neovim and writes down what its own language client shows of it.
-- FETTLE_JOB names a JSON file; see ../support/plain.ts for what goes in and what must come out.
local function read(path)
  return vim.fn.json_decode(table.concat(vim.fn.readfile(path), '\n'))
end

local job = read(vim.env.FETTLE_JOB)
local outcome = {}

local function wait(what, look)
  local seen
  local ok = vim.wait(job.limitMs, function()
    seen = look()
    return seen ~= nil and seen ~= false
  end, 5)
  if not ok then
    error('Waited in vain: ' .. what)
  end
  return seen
end

-- 0.7 keeps a finding's code among the client's own data, later versions beside it.
local function code(diagnostic)
  local lsp = (diagnostic.user_data or {}).lsp or {}
  return diagnostic.code or lsp.code
end

local function finding()
  for _, diagnostic in ipairs(vim.diagnostic.get(0)) do
    if code(diagnostic) == job.finding then
      return diagnostic
    end
  end
end

local function float_text()
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    if vim.api.nvim_win_get_config(window).relative ~= '' then
      return table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false), '\n')
    end
  end
end

local function start()
  vim.cmd('edit ' .. vim.fn.fnameescape(job.file))
  local ready = false
  local client = vim.lsp.start_client({
    name = 'fettle',
    cmd = job.command,
    root_dir = job.workspace,
    get_language_id = function() return job.languageId end,
    on_init = function() ready = true end,
  })
  assert(client, 'the client did not start')
  vim.lsp.buf_attach_client(0, client)
  wait('the server answers initialize', function() return ready end)
  return client
end

local function type_mistake()
  local begun = vim.loop.hrtime()
  vim.api.nvim_buf_set_text(0, job.line, job.value, job.line, job.valueEnd, { job.typed })
  local found = wait('the finding comes', finding)
  outcome.keystrokeToFindingMs = math.floor((vim.loop.hrtime() - begun) / 1e6)
  outcome.source = found.source
  outcome.broken = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n') .. '\n'
end

local function hover()
  vim.api.nvim_win_set_cursor(0, { job.line + 1, job.key })
  vim.lsp.buf.hover()
  outcome.hover = wait('the hover opens', float_text)
end

local function mend()
  local found = finding()
  vim.api.nvim_win_set_cursor(0, { found.lnum + 1, found.col })
  vim.ui.select = function(items, _, choose)
    local chosen = items[1]
    for _, item in ipairs(items) do
      local action = item[2] or item.action
      if action.isPreferred then
        chosen = item
        break
      end
    end
    outcome.fix = (chosen[2] or chosen.action).title
    choose(chosen)
  end
  vim.lsp.buf.code_action({ only = { 'quickfix' }, diagnostics = vim.lsp.diagnostic.get_line_diagnostics(0) })
  wait('a quick fix is chosen', function() return outcome.fix end)
  wait('the finding goes', function() return not finding() end)
  vim.cmd('write')
end

local function whole()
  return table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n') .. '\n'
end

local function rename()
  local before = whole()
  vim.api.nvim_win_set_cursor(0, { job.nameAt.line + 1, job.nameAt.character })
  vim.lsp.buf.references(nil, {
    on_list = function(list) vim.fn.setqflist({}, ' ', list) end,
  })
  wait('the uses come', function() return #vim.fn.getqflist() > 0 end)
  outcome.uses = {}
  for _, item in ipairs(vim.fn.getqflist()) do
    table.insert(outcome.uses, item.lnum)
  end
  table.sort(outcome.uses)
  vim.cmd('cclose')
  vim.api.nvim_win_set_cursor(0, { job.nameAt.line + 1, job.nameAt.character })
  vim.lsp.buf.rename(job.newName)
  wait('the name is changed', function() return whole() ~= before end)
  outcome.renamed = whole()
  vim.cmd('undo')
  outcome.undone = whole() == before
end

-- 0.10 and later show them.
local function hints()
  if not vim.lsp.inlay_hint then return end
  vim.lsp.inlay_hint.enable(true, { bufnr = 0 })
  outcome.hints = {}
  wait('the hints come', function() return #vim.lsp.inlay_hint.get({ bufnr = 0 }) > 0 end)
  for _, shown in ipairs(vim.lsp.inlay_hint.get({ bufnr = 0 })) do
    table.insert(outcome.hints, shown.inlay_hint.label)
  end
end

local ok, problem = pcall(function()
  local client = start()
  type_mistake()
  hover()
  mend()
  hints()
  rename()
  vim.lsp.stop_client(client)
  wait('the server ends when asked to', function() return vim.lsp.client_is_stopped(client) end)
end)
if not ok then
  local shown = {}
  for _, diagnostic in ipairs(vim.diagnostic.get(0)) do
    table.insert(shown, tostring(code(diagnostic)) .. ': ' .. diagnostic.message)
  end
  outcome.problem = tostring(problem) .. '\nFindings shown: ' .. table.concat(shown, '; ')
end
vim.fn.writefile({ vim.fn.json_encode(outcome) }, job.outcome)
vim.cmd('qall!')
